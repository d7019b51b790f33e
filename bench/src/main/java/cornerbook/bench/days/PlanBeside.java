package cornerbook.bench.days;

import cornerbook.app.planner.Planner;
import cornerbook.core.days.plan.PlanBound;
import cornerbook.core.days.plan.PlanProblem;
import java.time.Duration;
import java.util.Locale;

/** Lays invented visits on six weeks of five hoists, and prints how far the plan is above the bounds. Arguments: visits, seed, seconds. */
public final class PlanBeside {
    private static final double NS_PER_S = 1e9;
    private static final double PERCENT = 100;

    private PlanBeside() {}

    /** Prints two lines. */
    public static void main(String[] arguments) {
        var problem = Rush.of(Integer.parseInt(arguments[0]), Long.parseLong(arguments[1]));
        var longest = Duration.ofSeconds(Long.parseLong(arguments[2]));
        long begun = System.nanoTime();
        var plan = new Planner(problem, longest, longest).search(score -> {});
        double searched = (System.nanoTime() - begun) / NS_PER_S;
        var score = problem.score(plan);
        begun = System.nanoTime();
        double bound = PlanBound.of(problem, score.points());
        double bounded = (System.nanoTime() - begun) / NS_PER_S;
        System.out.printf(
                Locale.ROOT,
                "%d visits, %d stretches: %.1f s, over %d min, %d without a place, %d points; bound %.0f (%.1f s), gap %.2f %%%n",
                problem.visits().size(),
                problem.stretches().size(),
                searched,
                score.overMinutes(),
                plan.stream().filter(each -> each == PlanProblem.NOWHERE).count(),
                score.points(),
                bound,
                bounded,
                PERCENT * (score.points() - bound) / bound);
        double linear = LinearBound.of(problem);
        System.out.printf(
                Locale.ROOT,
                "linear relaxation %.0f, gap %.2f %%%n",
                linear,
                PERCENT * (score.points() - linear) / linear);
    }
}
