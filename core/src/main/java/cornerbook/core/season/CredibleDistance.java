package cornerbook.core.season;

/**
 * How far a car can be believed to have run, asked where an odometer is typed: a digit too many, or two that have changed
 * places, make a distance that this car does not run. It is
 *
 * <pre>
 *   days · (m + 3.090 s) + 1500 km
 * </pre>
 *
 * with m ± s the car's distance per day as {@link DistanceHistory} expects it; 3.090 is the 0.999 quantile of the standard
 * normal distribution (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1). The journey on top keeps a few days
 * with a long drive from being doubted: common practice, no source. What lies beyond may be true, and is asked about once.
 */
public final class CredibleDistance {
    private static final double ONE_IN_A_THOUSAND = 3.090;
    private static final double JOURNEY_KM = 1500;

    private CredibleDistance() {}

    /**
     * The longest distance that needs no second look, km.
     *
     * @param days that it was run in, 0 or more
     */
    public static double mostKm(DistancePerDay expected, long days) {
        if (days < 0) {
            throw new IllegalArgumentException("a distance was run in %s days, expected 0 or more".formatted(days));
        }
        return days * (expected.meanKm() + ONE_IN_A_THOUSAND * expected.sdKm()) + JOURNEY_KM;
    }
}
