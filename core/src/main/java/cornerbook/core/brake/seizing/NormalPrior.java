package cornerbook.core.brake.seizing;

/**
 * What is believed of a coefficient before the data: normal with this mean and standard deviation. An infinite standard
 * deviation says that nothing is believed.
 */
public record NormalPrior(double mean, double sd) {
    /** Leaves the coefficient to the data alone. */
    public static final NormalPrior FLAT = new NormalPrior(0, Double.POSITIVE_INFINITY);

    public NormalPrior {
        if (!(Math.abs(mean) < Double.POSITIVE_INFINITY && sd > 0)) {
            throw new IllegalArgumentException(
                    "prior has mean %s and s.d. %s, expected a finite mean and an s.d. above 0".formatted(mean, sd));
        }
    }

    double precision() {
        return 1 / (sd * sd);
    }
}
