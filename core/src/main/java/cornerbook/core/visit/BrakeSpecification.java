package cornerbook.core.visit;

/**
 * The brake of one axle, from the vehicle manufacturer's data.
 *
 * @param padMinimumMm friction material left at which the pad is to be replaced
 * @param discMinimumMm minimum thickness of the disc (the wear limit, not the refinishing limit)
 */
public record BrakeSpecification(
        Caliper caliper,
        boolean electricParkingBrake,
        double padNewMm,
        double padMinimumMm,
        double discNewMm,
        double discMinimumMm,
        double runoutLimitMm,
        double thicknessVariationLimitMm) {

    /** How the caliper reaches the outer pad. */
    public enum Caliper {
        SLIDING,
        FIXED
    }

    public BrakeSpecification {
        Checks.range("pad when new", padNewMm, 1, 30, "mm");
        Checks.range("pad minimum", padMinimumMm, 0, padNewMm, "mm");
        Checks.range("disc when new", discNewMm, 3, 60, "mm");
        Checks.range("disc minimum", discMinimumMm, 1, discNewMm, "mm");
        Checks.range("runout limit", runoutLimitMm, 0.005, 1, "mm");
        Checks.range("thickness variation limit", thicknessVariationLimitMm, 0.001, 1, "mm");
    }
}
