package cornerbook.app.planner;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.days.plan.PlanBound;
import cornerbook.core.days.plan.PlanGap;
import cornerbook.core.days.plan.PlanProblem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bound against all plans of small shops, each of which is looked at. */
class PlanBoundPropertyTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void noPlanGoesBelowIt(long seed) {
        var problem = SmallShops.problem(seed, 6);
        var best = SmallShops.best(problem);
        assertThat(PlanBound.of(problem, best.points())).isLessThanOrEqualTo((double) best.points());
        assertThat(PlanBound.of(problem, 2 * best.points())).isLessThanOrEqualTo((double) best.points());
    }

    /** Of any plan, here the one that lays nothing: the share that is told is never less than what the best plan saves. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void theGapIsAtLeastWhatTheBestPlanSaves(long seed) {
        var problem = SmallShops.problem(seed, 6);
        var nothing =
                problem.visits().stream().map(visit -> PlanProblem.NOWHERE).toList();
        double points = (double) problem.score(nothing).points();
        double saved = 100 * (points - (double) SmallShops.best(problem).points()) / points;
        assertThat(PlanGap.of(problem, nothing))
                .satisfies(gap -> assertThat(gap.percent()).isGreaterThanOrEqualTo(saved))
                .satisfies(gap -> assertThat(gap.said()).isBetween(gap.percent(), gap.percent() + 1));
    }
}
