package cornerbook.core.brake;

import cornerbook.core.quantity.Range;

/**
 * What is believed of the wear of a pad or a disc before it was measured. All defaults: common practice, no source.
 *
 * @param newMm thickness when new
 * @param newSdMm how far the true one may lie from it
 * @param rateMmPer1000Km mean wear rate
 * @param rateSdMmPer1000Km how far a corner's own rate may lie from it
 * @param readingSdMm of one measurement
 */
public record WearPrior(
        double newMm, double newSdMm, double rateMmPer1000Km, double rateSdMmPer1000Km, double readingSdMm) {
    /** Wide against every reading. */
    private static final double UNKNOWN_SD_MM = 5;

    public WearPrior {
        Range.check("thickness when new", newMm, 0.1, 60, "mm");
        Range.check("s.d. of the thickness when new", newSdMm, 1e-4, 5, "mm");
        Range.check("wear rate", rateMmPer1000Km, 1e-5, 5, "mm per 1000 km");
        Range.check("s.d. of the wear rate", rateSdMmPer1000Km, 1e-5, 5, "mm per 1000 km");
        Range.check("s.d. of a reading", readingSdMm, 1e-4, 2, "mm");
    }

    /** A pad read with a gauge. */
    public static WearPrior pad(double newMm) {
        return new WearPrior(newMm, 0.3, 0.10, 0.06, 0.25);
    }

    /** A disc read with a micrometer. */
    public static WearPrior disc(double newMm) {
        return new WearPrior(newMm, 0.05, 0.010, 0.008, 0.02);
    }

    /** The lining of the shoes of a drum, which do less than pads. */
    public static WearPrior lining(double newMm) {
        return new WearPrior(newMm, 0.3, 0.05, 0.03, 0.25);
    }

    /** What a drum may still grow in diameter, read with a drum gauge. */
    public static WearPrior drum(double newMm) {
        return new WearPrior(newMm, 0.1, 0.005, 0.004, 0.05);
    }

    /** The same for a part whose age is not known: how thick it was when it was first read is left to the readings. */
    public WearPrior ofUnknownAge() {
        return new WearPrior(newMm, UNKNOWN_SD_MM, rateMmPer1000Km, rateSdMmPer1000Km, readingSdMm);
    }
}
