package cornerbook.core.numeric;

/**
 * A Gaussian that is known to lie at or above a floor. With z = (µ − floor)/σ and λ = φ(z)/Φ(z)
 *
 * <pre>  mean = µ + σ λ,   variance = σ² (1 − λ (λ + z))                                                          (1)</pre>
 *
 * Far below the floor, where (1) loses its digits, λ is the continued fraction x + 1/(x + 2/(x + 3/(x + …))) of x = −z; with
 * g = λ − x = 1/(x + h) and h = 2/(x + 3/(x + …))
 *
 * <pre>  mean = floor + σ g,   variance = σ² (h − g)/(x + h)                                                      (2)</pre>
 *
 * Source: Johnson, Kotz and Balakrishnan 1994, Continuous Univariate Distributions 1, section 13.10.1, for (1); Abramowitz
 * and Stegun 26.2.14 for the fraction. The mean lies above the floor by no less than the standard deviation. Accurate to
 * 1e-8 relative.
 */
public final class TruncatedNormal {
    private static final double FAR_BELOW = -5;
    /** Steps of the fraction, enough for 1e-10 from five standard deviations on. */
    private static final int DEPTH = 40;

    private TruncatedNormal() {}

    /** Mean and standard deviation of what is left at or above the floor. */
    public static Estimate above(Estimate gaussian, double floor) {
        double z = (gaussian.mean() - floor) / gaussian.sd();
        if (z < FAR_BELOW) {
            double x = -z;
            double h = 0;
            for (int k = DEPTH; k >= 2; k--) {
                h = k / (x + h);
            }
            double g = 1 / (x + h);
            return new Estimate(floor + gaussian.sd() * g, gaussian.sd() * Math.sqrt((h - g) / (x + h)));
        }
        double ratio = NormalDistribution.density(z) / NormalDistribution.cumulative(z);
        return new Estimate(
                gaussian.mean() + gaussian.sd() * ratio, gaussian.sd() * Math.sqrt(1 - ratio * (ratio + z)));
    }
}
