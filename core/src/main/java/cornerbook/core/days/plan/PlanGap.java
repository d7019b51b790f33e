package cornerbook.core.days.plan;

import cornerbook.core.quantity.Range;
import java.util.List;

/**
 * How far a plan may be from the best: of its points no plan can have fewer by more than this share. It is what the bound leaves open,
 * and may be nothing but that; the plan itself may well be the best.
 *
 * @param percent of the points, 0 to 100; 0 where no plan is better
 */
public record PlanGap(double percent) {
    private static final double HUNDRED = 100;

    /** The bound is a sum of doubles: by so little it may be too high. */
    private static final double ROUNDING = 1e-6;

    public PlanGap {
        Range.check("percent", percent, 0, HUNDRED, "%");
    }

    /**
     * Of a plan.
     *
     * @param plan the stretch of each visit, or {@link PlanProblem#NOWHERE}
     */
    public static PlanGap of(PlanProblem problem, List<Integer> plan) {
        long points = problem.score(plan).points();
        if (points <= 0) {
            return new PlanGap(0);
        }
        // Plans have whole points.
        double least = Math.ceil(PlanBound.of(problem, points) - ROUNDING);
        return new PlanGap(Math.clamp(HUNDRED * ((double) points - least) / (double) points, 0, HUNDRED));
    }

    public boolean isNone() {
        return percent == 0;
    }

    /** As it is said: no less than it is, in tenths below ten per cent, else whole. */
    public double said() {
        double steps = percent < 10 ? 10 : 1;
        return Math.ceil(percent * steps) / steps;
    }
}
