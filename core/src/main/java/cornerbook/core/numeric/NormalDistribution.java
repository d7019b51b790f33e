package cornerbook.core.numeric;

/**
 * The standard normal distribution. Distribution function by Hart's rational approximation (Hart et al. 1968, algorithm
 * 5666, in the double-precision form of West 2005); absolute error below 1e-14.
 */
public final class NormalDistribution {
    private static final double INVERSE_ROOT_TWO_PI = 0.3989422804014327;

    private NormalDistribution() {}

    public static double density(double z) {
        return INVERSE_ROOT_TWO_PI * Math.exp(-0.5 * z * z);
    }

    public static double cumulative(double z) {
        return cumulative(z, density(z));
    }

    /**
     * The same where the density is known already, for an exponential less.
     *
     * @param density at z
     */
    public static double cumulative(double z, double density) {
        double x = Math.abs(z);
        double tail = x > 37 ? 0 : tail(x, density / INVERSE_ROOT_TWO_PI);
        return z > 0 ? 1 - tail : tail;
    }

    private static double tail(double x, double exponential) {
        if (x >= 7.07106781186547) {
            double fraction = x + 0.65;
            for (int k = 4; k >= 1; k--) {
                fraction = x + k / fraction;
            }
            return exponential * INVERSE_ROOT_TWO_PI / fraction;
        }
        double numerator = 3.52624965998911E-02 * x + 0.700383064443688;
        numerator = numerator * x + 6.37396220353165;
        numerator = numerator * x + 33.912866078383;
        numerator = numerator * x + 112.079291497871;
        numerator = numerator * x + 221.213596169931;
        numerator = numerator * x + 220.206867912376;
        double denominator = 8.83883476483184E-02 * x + 1.75566716318264;
        denominator = denominator * x + 16.064177579207;
        denominator = denominator * x + 86.7807322029461;
        denominator = denominator * x + 296.564248779674;
        denominator = denominator * x + 637.333633378831;
        denominator = denominator * x + 793.826512519948;
        denominator = denominator * x + 440.413735824752;
        return exponential * numerator / denominator;
    }
}
