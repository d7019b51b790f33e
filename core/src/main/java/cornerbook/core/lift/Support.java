package cornerbook.core.lift;

import cornerbook.core.corner.Corner;
import java.util.Arrays;
import java.util.Comparator;

/**
 * Loads on four points under a rigid body. Three conditions (sum, two moments) leave one unknown; with equal springs under
 * the points the loads are linear in place, N_i = a + b x_i + c y_i, which is also the solution of least squares among all
 * that balance (least complementary energy). A point cannot pull: where it would, it is left out. Exact up to rounding.
 */
final class Support {
    private static final int POINTS = 4;
    /** Loads this far below zero, as a share of the total, are rounding. */
    private static final double ROUNDING = 1e-9;

    private final double[] x = new double[POINTS];
    private final double[] y = new double[POINTS];
    private final double totalKg;

    /** Places relative to the centre of gravity, so that both moments are zero. */
    Support(LiftPoints points, double totalKg, double behindFrontAxleMm, double leftOfCentreMm) {
        for (var corner : Corner.values()) {
            x[corner.ordinal()] = points.get(corner).behindFrontAxleMm() - behindFrontAxleMm;
            y[corner.ordinal()] = points.get(corner).leftOfCentreMm() - leftOfCentreMm;
        }
        this.totalKg = totalKg;
    }

    /** Loads by corner with equal springs, none below zero, kg. */
    double[] equalSprings() {
        var linear = linear(-1);
        if (balanced(linear)) {
            return linear;
        }
        return Arrays.stream(Corner.values())
                .map(Corner::ordinal)
                .sorted(Comparator.comparingDouble(i -> linear[i]))
                .map(this::linear)
                .filter(this::balanced)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("centre of gravity outside the points"));
    }

    /** The most that each point may carry when the pads do not bear evenly: the extremes have one point unloaded, kg. */
    double[] most() {
        var most = equalSprings();
        for (int without = 0; without < POINTS; without++) {
            var three = linear(without);
            if (balanced(three)) {
                for (int i = 0; i < POINTS; i++) {
                    most[i] = Math.max(most[i], three[i]);
                }
            }
        }
        return most;
    }

    private boolean balanced(double[] loads) {
        return Arrays.stream(loads).allMatch(load -> load >= -ROUNDING * totalKg);
    }

    /** Solves Σ (1, x, y)ᵀ(1, x, y) (a, b, c) = (W, 0, 0) by Cramer's rule; with three points the loads are those of statics. */
    private double[] linear(int without) {
        double n = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < POINTS; i++) {
            if (i != without) {
                n++;
                sx += x[i];
                sy += y[i];
                sxx += x[i] * x[i];
                sxy += x[i] * y[i];
                syy += y[i] * y[i];
            }
        }
        double minorA = sxx * syy - sxy * sxy;
        double minorB = sx * syy - sxy * sy;
        double minorC = sx * sxy - sxx * sy;
        double scale = totalKg / (n * minorA - sx * minorB + sy * minorC);
        var loads = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            loads[i] = i == without ? 0 : scale * (minorA - minorB * x[i] + minorC * y[i]);
        }
        return loads;
    }
}
