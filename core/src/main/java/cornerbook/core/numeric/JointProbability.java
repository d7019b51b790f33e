package cornerbook.core.numeric;

/**
 * Probability that up to four jointly Gaussian variables are all at or above zero: of two by a line integral (1), of
 * three or four from two independent pairs (2), whose correlations with each other are then let grow from nothing to what
 * they are by Plackett's identity (3). All three by Gauss–Legendre rules.
 *
 * <pre>
 *   Φ2(h, k; ρ) = Φ(h) Φ(k) + 1/2π ∫_0^{asin ρ} exp(−(h² + k² − 2hk sin θ) / (2 cos² θ)) dθ        (1)
 *   P(0) = Φ2(z_1, z_2; ρ_12) Φ2(z_3, z_4; ρ_34)                                                  (2)
 *   dP/dt = Σ_{i in one pair, j in the other} ρ_ij φ2(z_i, z_j; t ρ_ij) P(the rest | z_i, z_j)    (3)
 * </pre>
 *
 * Valid for correlations up to about 0.95. Sources: Plackett 1954, Biometrika 41:351; Drezner and Wesolowsky 1990, J.
 * Statist. Comput. Simul. 35:101, for (1). Error below 2e-4 against Genz's algorithm in R's mvtnorm.
 */
public final class JointProbability {
    private static final int MOST = 4;
    // Abramowitz and Stegun, table 25.4, n = 6 and n = 3.
    private static final double[] NODES_6 = {
        -0.932469514203152,
        -0.6612093864662645,
        -0.2386191860831969,
        0.2386191860831969,
        0.6612093864662645,
        0.932469514203152
    };
    private static final double[] WEIGHTS_6 = {
        0.1713244923791704,
        0.3607615730481386,
        0.467913934572691,
        0.467913934572691,
        0.3607615730481386,
        0.1713244923791704
    };
    private static final double[] NODES_3 = {-0.7745966692414834, 0, 0.7745966692414834};
    private static final double[] WEIGHTS_3 = {0.5555555555555556, 0.8888888888888888, 0.5555555555555556};
    /** Correlations below this need only three nodes. */
    private static final double WEAK = 0.5;

    /** A slope this small cannot change the probability by more than a hundredth of the error. */
    private static final double NEGLIGIBLE = 1e-6;

    private static final double MOST_CORRELATION = 0.999;
    /** A variable this far above zero is above it for certain. */
    private static final double CERTAIN = 8;

    private JointProbability() {}

    /**
     * Equations (1) to (3).
     *
     * @param z mean of each variable over its standard deviation; the first {@code n} count
     * @param correlation 4 by 4, row-major; the lower triangle of the first {@code n} rows is read
     */
    public static double allAbove(double[] z, double[] correlation, int n) {
        if (n > MOST) {
            throw new IllegalArgumentException(n + " variables, expected 0 to " + MOST);
        }
        return switch (n) {
            case 0 -> 1;
            case 1 -> NormalDistribution.cumulative(z[0]);
            case 2 -> both(z[0], z[1], correlation[MOST]);
            default -> four(z, correlation, n);
        };
    }

    /** Equation (1). */
    private static double both(double h, double k, double correlation) {
        boolean weak = Math.abs(correlation) < WEAK;
        var nodes = weak ? NODES_3 : NODES_6;
        var weights = weak ? WEIGHTS_3 : WEIGHTS_6;
        double angle = Math.asin(correlation);
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double sine = Math.sin(angle * (1 + nodes[i]) / 2);
            sum += weights[i] * Math.exp((sine * h * k - (h * h + k * k) / 2) / (1 - sine * sine));
        }
        double independent = NormalDistribution.cumulative(h) * NormalDistribution.cumulative(k);
        return Math.max(0, independent + sum * angle / (4 * Math.PI));
    }

    private static double four(double[] z, double[] correlation, int n) {
        int partner = partnerOfFirst(correlation, n);
        int third = partner == 1 ? 2 : 1;
        int fourth = partner == 3 ? 2 : 3;
        var pairs = new int[] {0, partner, third, fourth};
        double probability = both(z[0], z[partner], at(correlation, n, 0, partner))
                * both(z[third], z(z, n, fourth), at(correlation, n, third, fourth));
        for (int node = 0; node < NODES_3.length; node++) {
            double t = (1 + NODES_3[node]) / 2;
            double slope = 0;
            for (int a = 0; a < 2; a++) {
                for (int b = 2; b < MOST; b++) {
                    slope += slope(z, correlation, n, t, pairs[a], pairs[b], pairs[1 - a], pairs[5 - b]);
                }
            }
            probability += WEIGHTS_3[node] / 2 * slope;
        }
        return Math.clamp(probability, 0, 1);
    }

    /** One term of (3): i with its partner k in one pair, j with its partner l in the other. */
    private static double slope(double[] z, double[] correlation, int n, double t, int i, int j, int k, int l) {
        double full = at(correlation, n, i, j);
        if (full == 0) {
            return 0;
        }
        double zi = z(z, n, i);
        double zj = z(z, n, j);
        double r = t * full;
        double own = 1 - r * r;
        double density = Math.exp(-(zi * zi - 2 * r * zi * zj + zj * zj) / (2 * own)) / (2 * Math.PI * Math.sqrt(own));
        if (Math.abs(full) * density < NEGLIGIBLE) {
            return 0;
        }
        double ki = at(correlation, n, k, i);
        double kj = t * at(correlation, n, k, j);
        double li = t * at(correlation, n, l, i);
        double lj = at(correlation, n, l, j);
        double kOnI = (ki - r * kj) / own;
        double kOnJ = (kj - r * ki) / own;
        double lOnI = (li - r * lj) / own;
        double lOnJ = (lj - r * li) / own;
        double sdK = Math.sqrt(1 - kOnI * ki - kOnJ * kj);
        double sdL = Math.sqrt(1 - lOnI * li - lOnJ * lj);
        double left = (t * at(correlation, n, k, l) - kOnI * li - kOnJ * lj) / (sdK * sdL);
        return full
                * density
                * both(
                        (z(z, n, k) - kOnI * zi - kOnJ * zj) / sdK,
                        (z(z, n, l) - lOnI * zi - lOnJ * zj) / sdL,
                        Math.clamp(left, -MOST_CORRELATION, MOST_CORRELATION));
    }

    /** The pairs that hold the most correlation, so that (3) has least to add. */
    private static int partnerOfFirst(double[] correlation, int n) {
        int best = 1;
        double most = -1;
        for (int partner = 1; partner < n; partner++) {
            int third = partner == 1 ? 2 : 1;
            int fourth = partner == 3 ? 2 : 3;
            double held = Math.abs(at(correlation, n, 0, partner)) + Math.abs(at(correlation, n, third, fourth));
            if (held > most) {
                most = held;
                best = partner;
            }
        }
        return best;
    }

    private static double z(double[] z, int n, int i) {
        return i < n ? z[i] : CERTAIN;
    }

    private static double at(double[] correlation, int n, int i, int j) {
        return i < n && j < n ? correlation[Math.max(i, j) * MOST + Math.min(i, j)] : 0;
    }
}
