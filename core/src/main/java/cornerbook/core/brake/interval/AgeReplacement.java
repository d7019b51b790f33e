package cornerbook.core.brake.interval;

import cornerbook.core.numeric.GaussLegendre;
import java.util.function.DoubleUnaryOperator;

/**
 * What is renewed at an age t, or when it fails before, at its cost for each unit of time (Barlow and Hunter 1960, Operations
 * Research 8:90, policy I):
 *
 * <pre>
 *   c(t) = (c_p R(t) + c_f (1 − R(t))) / ∫₀ᵗ R                                      (1)
 * </pre>
 *
 * R is the chance not to have failed by an age, c_p what a renewal costs that was planned, c_f one after a failure. The least of (1)
 * is looked for up to an age beyond which nobody plans; where the failures do not grow with age, or cost hardly more, there is none.
 *
 * @param survival R, from 1 at age 0 and never growing
 * @param planned c_p, above 0
 * @param failed c_f, at least c_p
 */
record AgeReplacement(DoubleUnaryOperator survival, double planned, double failed) {
    /** R bends little within each of so many parts of an age. */
    private static final int PARTS = 16;

    private static final int TRIED = 400;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 60;
    private static final int HALVINGS = 30;

    /** ∫₀ᵗ R. */
    double meanTime(double age) {
        double sum = 0;
        for (int i = 0; i < PARTS; i++) {
            sum += GaussLegendre.NINE.integral(age * i / PARTS, age * (i + 1) / PARTS, survival);
        }
        return sum;
    }

    /** (1). */
    double costRate(double age) {
        return costRate(age, meanTime(age));
    }

    private double costRate(double age, double meanTime) {
        double free = survival.applyAsDouble(age);
        return (planned * free + failed * (1 - free)) / meanTime;
    }

    /** Where (1) is least; {@code longest} where it still falls there. */
    double bestAge(double longest) {
        double best = 0;
        double bestRate = Double.POSITIVE_INFINITY;
        double timeBefore = 0;
        double time = 0;
        double apart = longest / TRIED;
        for (int i = 1; i <= TRIED; i++) {
            double before = time;
            time += GaussLegendre.NINE.integral((i - 1) * apart, i * apart, survival);
            double rate = costRate(i * apart, time);
            if (rate < bestRate) {
                bestRate = rate;
                best = i * apart;
                timeBefore = before;
            }
        }
        return best >= longest - apart / 2 ? longest : narrowed(best - apart, best + apart, timeBefore);
    }

    /** By the golden section. */
    private double narrowed(double from, double to, double timeAtFrom) {
        double low = from;
        double high = to;
        for (int i = 0; i < NARROWINGS; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            double rateLeft = costRate(left, timeAtFrom + GaussLegendre.NINE.integral(from, left, survival));
            double rateRight = costRate(right, timeAtFrom + GaussLegendre.NINE.integral(from, right, survival));
            if (rateLeft <= rateRight) {
                high = right;
            } else {
                low = left;
            }
        }
        return (low + high) / 2;
    }

    /** The age on one side of the best one at which (1) is so much; that side's end where it never is. */
    double ageOfCost(double cost, double best, double end) {
        if (costRate(end) <= cost) {
            return end;
        }
        double near = best;
        double far = end;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (near + far) / 2;
            if (costRate(middle) <= cost) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return near;
    }
}
