package cornerbook.core.numeric;

import java.util.Arrays;

/**
 * Probability that jointly Gaussian variables are all at or above zero. Given one weighted sum of them, the one that takes
 * most of their variance with it, little is left that they share; what is left is taken variable by variable, each time as
 * the Gaussian next to the others given that this one holds:
 *
 * <pre>
 *   P = ∫ φ(z) P(µ + l z + R ≥ 0) dz,   l = Σx/√(xᵀΣx),   Cov R = Σ − llᵀ                                (1)
 *   P(R) ≈ Π Φ(a_i),   a_i = µ_i/s_i of what is left of the i-th given those before it                    (2)
 * </pre>
 *
 * (1) is exact for any x; x is Σ's leading eigenvector after some steps of the power method, and a Gauss–Legendre rule takes
 * the stretch of z on which the variables go from holding to failing. Sources: Curnow and Dunnett 1962, Ann. Math. Statist.
 * 33:571, for the common factor; Mendell and Elston 1974, Biometrics 30:41, for (2). Error below 0.005 for the twelve
 * grooves of a set against Genz's algorithm, 0.0014 root mean square; below 0.012 for four depths that share little.
 */
public final class JointProbability {
    private static final int POWER_STEPS = 6;
    /** All hold for all but certain where the weakest lies so many of its standard deviations above zero ... */
    private static final double FOR_CERTAIN_ABOVE = 3;
    /** ... and hardly where one lies so many below. */
    private static final double FOR_CERTAIN_BELOW = -2.75;

    /** The sum lies within so many standard deviations of its mean. */
    private static final double REACH = 4;
    /** Of a variance: what rounding leaves of nothing. */
    private static final double NOTHING = 1e-12;
    /** What lies so many standard deviations above zero says nothing of the others, and fails with 3e-7. */
    private static final double ALL_BUT_CERTAIN = 5;

    private final int size;
    private final double[] mean;
    /** Row-major. */
    private final double[] covariance;
    /** l of (1). */
    private final double[] loading;
    /** Of what is left. */
    private final double[] sd;
    /** What (2) works on, made once. */
    private final double[] meanLeft;

    private final double[] left;
    private final double[] column;

    private JointProbability(double[] mean, double[] covariance) {
        size = mean.length;
        this.mean = mean;
        this.covariance = covariance;
        loading = new double[size];
        sd = new double[size];
        meanLeft = new double[size];
        left = new double[size * size];
        column = new double[size];
    }

    /**
     * Equation (1), of any number of variables.
     *
     * @param covariance row-major and symmetric; both are left as they are
     */
    public static double allAbove(double[] mean, double[] covariance) {
        if (mean.length == 0) {
            return 1;
        }
        if (mean.length == 1) {
            return NormalDistribution.cumulative(mean[0] / Math.sqrt(covariance[0]));
        }
        return new JointProbability(mean, covariance.clone()).givenTheSum();
    }

    /** Equation (2) of all variables as they are: many times faster, and to about 0.05. */
    public static double roughlyAllAbove(double[] mean, double[] covariance) {
        return new JointProbability(mean, covariance).oneByOne(0);
    }

    private double givenTheSum() {
        findLoading();
        double holdsFrom = -REACH;
        double holdsUntil = REACH;
        double failsUntil = -REACH;
        double failsFrom = REACH;
        for (int i = 0; i < size; i++) {
            double surely = FOR_CERTAIN_ABOVE * sd[i] - mean[i];
            double hardly = FOR_CERTAIN_BELOW * sd[i] - mean[i];
            if (loading[i] > 0) {
                holdsFrom = Math.max(holdsFrom, surely / loading[i]);
                failsUntil = Math.max(failsUntil, hardly / loading[i]);
            } else {
                double falls = Math.min(loading[i], -Double.MIN_NORMAL);
                holdsUntil = Math.min(holdsUntil, surely / falls);
                failsFrom = Math.min(failsFrom, hardly / falls);
            }
        }
        if (holdsFrom >= holdsUntil) {
            return integral(failsUntil, failsFrom);
        }
        return integral(failsUntil, holdsFrom)
                + NormalDistribution.cumulative(holdsUntil)
                - NormalDistribution.cumulative(holdsFrom)
                + integral(holdsUntil, failsFrom);
    }

    /** l of (1), and the covariance of what is left. */
    private void findLoading() {
        int widest = 0;
        for (int i = 1; i < size; i++) {
            widest = covariance[i * size + i] > covariance[widest * size + widest] ? i : widest;
        }
        var x = new double[size];
        x[widest] = 1;
        for (int step = 0; step < POWER_STEPS; step++) {
            Arrays.fill(loading, 0);
            for (int j = 0; j < size; j++) {
                double factor = x[j];
                int row = j * size;
                for (int i = 0; i < size; i++) {
                    loading[i] += factor * covariance[row + i];
                }
            }
            double square = 0;
            for (int i = 0; i < size; i++) {
                square += loading[i] * x[i];
            }
            double length = Math.sqrt(square);
            for (int i = 0; i < size; i++) {
                loading[i] /= length;
            }
            System.arraycopy(loading, 0, x, 0, size);
        }
        for (int i = 0; i < size; i++) {
            double variance = covariance[i * size + i];
            for (int j = 0; j < size; j++) {
                covariance[i * size + j] -= loading[i] * loading[j];
            }
            covariance[i * size + i] = Math.max(covariance[i * size + i], NOTHING * variance);
            sd[i] = Math.sqrt(covariance[i * size + i]);
        }
    }

    private double integral(double from, double to) {
        return GaussLegendre.NINE.integral(from, to, z -> NormalDistribution.density(z) * oneByOne(z));
    }

    /** Equation (2), given the sum. */
    private double oneByOne(double z) {
        for (int i = 0; i < size; i++) {
            meanLeft[i] = mean[i] + loading[i] * z;
        }
        System.arraycopy(covariance, 0, left, 0, left.length);
        double probability = 1;
        for (int i = 0; i < size; i++) {
            double variance = Math.max(left[i * size + i], NOTHING * covariance[i * size + i]);
            double perSd = 1 / Math.sqrt(variance);
            double a = meanLeft[i] * perSd;
            if (a > ALL_BUT_CERTAIN) {
                continue;
            }
            double density = NormalDistribution.density(a);
            double above = NormalDistribution.cumulative(a, density);
            probability *= above;
            if (probability < NOTHING) {
                return 0;
            }
            double shift = density / above;
            double shrink = shift * (shift + a) * perSd * perSd;
            double shiftPerSd = shift * perSd;
            for (int j = i + 1; j < size; j++) {
                double with = left[j * size + i];
                column[j] = with;
                meanLeft[j] += shiftPerSd * with;
                double factor = shrink * with;
                int row = j * size;
                for (int k = i + 1; k <= j; k++) {
                    left[row + k] -= factor * column[k];
                }
            }
        }
        return probability;
    }
}
