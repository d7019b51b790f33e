package cornerbook.core.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Integral by the Gauss–Legendre rule of nine nodes, exact for polynomials up to degree 17. Source: Abramowitz and Stegun,
 * table 25.4.
 */
public final class GaussLegendre {
    private static final double[] NODES = {
        -0.9681602395076261,
        -0.8360311073266358,
        -0.6133714327005904,
        -0.3242534234038089,
        0,
        0.3242534234038089,
        0.6133714327005904,
        0.8360311073266358,
        0.9681602395076261
    };
    private static final double[] WEIGHTS = {
        0.0812743883615744,
        0.1806481606948574,
        0.2606106964029354,
        0.3123470770400029,
        0.3302393550012598,
        0.3123470770400029,
        0.2606106964029354,
        0.1806481606948574,
        0.0812743883615744
    };

    private GaussLegendre() {}

    /** From one end to the other; 0 where the stretch is empty. */
    public static double integral(double from, double to, DoubleUnaryOperator function) {
        if (!(from < to)) {
            return 0;
        }
        double half = (to - from) / 2;
        double sum = 0;
        for (int node = 0; node < NODES.length; node++) {
            sum += WEIGHTS[node] * function.applyAsDouble(from + half * (1 + NODES[node]));
        }
        return half * sum;
    }
}
