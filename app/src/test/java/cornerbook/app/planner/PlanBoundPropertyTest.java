package cornerbook.app.planner;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.days.plan.PlanBound;
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
}
