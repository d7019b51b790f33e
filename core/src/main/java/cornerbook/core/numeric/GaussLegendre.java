package cornerbook.core.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Integral by a Gauss–Legendre rule. Source: Abramowitz and Stegun,
 * table 25.4.
 */
public final class GaussLegendre {
    /** Exact for polynomials of degree 13. */
    public static final GaussLegendre SEVEN = new GaussLegendre(
            new double[] {
                -0.9491079123427586,
                -0.7415311855993945,
                -0.4058451513773972,
                0,
                0.4058451513773972,
                0.7415311855993945,
                0.9491079123427586
            },
            new double[] {
                0.1294849661688697,
                0.2797053914892769,
                0.3818300505051187,
                0.4179591836734693,
                0.3818300505051187,
                0.2797053914892769,
                0.1294849661688697
            });

    /** Exact for polynomials of degree 17. */
    public static final GaussLegendre NINE = new GaussLegendre(
            new double[] {
                -0.9681602395076261,
                -0.8360311073266358,
                -0.6133714327005904,
                -0.3242534234038089,
                0,
                0.3242534234038089,
                0.6133714327005904,
                0.8360311073266358,
                0.9681602395076261
            },
            new double[] {
                0.0812743883615744,
                0.1806481606948574,
                0.2606106964029354,
                0.3123470770400029,
                0.3302393550012598,
                0.3123470770400029,
                0.2606106964029354,
                0.1806481606948574,
                0.0812743883615744
            });

    private final double[] nodes;
    private final double[] weights;

    private GaussLegendre(double[] nodes, double[] weights) {
        this.nodes = nodes;
        this.weights = weights;
    }

    /** From one end to the other; 0 where the stretch is empty. */
    public double integral(double from, double to, DoubleUnaryOperator function) {
        if (!(from < to)) {
            return 0;
        }
        double half = (to - from) / 2;
        double sum = 0;
        for (int node = 0; node < nodes.length; node++) {
            sum += weights[node] * function.applyAsDouble(from + half * (1 + nodes[node]));
        }
        return half * sum;
    }
}
