package cornerbook.app.planner;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.days.plan.PlanScore;
import java.time.Duration;
import java.util.ArrayList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The solver against all plans of small shops, each of which is looked at. */
class PlannerPropertyTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void findsThePlanThatIsBestOfAll(long seed) {
        var problem = SmallShops.problem(seed, 7);
        var told = new ArrayList<PlanScore>();
        var found =
                problem.score(new Planner(problem, Duration.ofSeconds(30), Duration.ofMillis(700)).search(told::add));
        assertThat(found).isEqualTo(SmallShops.best(problem));
        assertThat(told).allSatisfy(each -> assertThat(each.points()).isGreaterThanOrEqualTo(found.points()));
    }
}
