package cornerbook.core.numeric;

/**
 * Student's t distribution of a whole number of degrees of freedom ν. Probability within ±t by its finite series in
 * θ = arctan(t/√ν) (Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 26.7.3 and 26.7.4); its inverse by halving
 * the range of θ until nothing is left of it.
 */
public final class StudentDistribution {
    private static final int HALVINGS = 60;

    private StudentDistribution() {}

    /**
     * The value that stays within ± itself with this probability.
     *
     * @param probability of both sides together, above 0 and below 1
     * @param degreesOfFreedom 1 or more
     */
    public static double within(double probability, int degreesOfFreedom) {
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (probabilityWithin(middle, degreesOfFreedom) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.tan(low) * Math.sqrt(degreesOfFreedom);
    }

    private static double probabilityWithin(double theta, int degreesOfFreedom) {
        boolean odd = degreesOfFreedom % 2 == 1;
        double cosine = Math.cos(theta);
        double term = odd ? cosine : 1;
        double sum = 0;
        for (int power = odd ? 1 : 0; power <= degreesOfFreedom - 2; power += 2) {
            sum += term;
            term *= cosine * cosine * (power + 1) / (power + 2);
        }
        double sines = Math.sin(theta) * sum;
        return odd ? 2 / Math.PI * (theta + sines) : sines;
    }
}
