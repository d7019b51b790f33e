package cornerbook.bench.wheelplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.wheelplan.search.WheelPlanner;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The planner against a general-purpose constraint solver (com.google.ortools, CP-SAT), all three levels. */
class SolverReferenceTest {
    /** The solver counts whole metres, and the planner may stop 1 km short of the longest to even out the wheels. */
    private static final double SAME_KM = 0.002;

    private static final double NEAR_KM = 1;

    @ParameterizedTest(name = "{1} requests over {0} seasons, seed {2}")
    @CsvSource({"1, 120, 21", "2, 60, 22", "3, 20, 23", "4, 5, 24"})
    void provesTheSameOptimum(int seasons, int requests, long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < requests; i++) {
            var request = Requests.any(random, seasons);
            var agreement = Agreement.of(request);
            assertThat(agreement.agrees())
                    .as("%d: %s of %s", i, agreement, request)
                    .isTrue();
        }
    }

    /** Both sets in one model of the solver; the planner plans them apart. */
    @Test
    void twoAlternatingSetsRunAsFarPlannedApart() {
        var random = new SplittableRandom(41);
        for (int i = 0; i < 10; i++) {
            var summer = Requests.free(random, 1);
            var winter = Requests.free(random, 2);
            double apartKm = Stream.of(summer, winter)
                    .mapToDouble(request -> WheelPlanner.plan(request, List.of(), List.of())
                            .orElseThrow()
                            .distanceKm())
                    .sum();
            assertThat(apartKm)
                    .isCloseTo(SolverPlan.distanceKm(summer, winter).orElseThrow(), within(2 * (NEAR_KM + SAME_KM)));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 120, 31", "2, 60, 32", "3, 15, 33"})
    void findsTheSameDistanceForTyresThatMayGoAnywhere(int seasons, int requests, long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < requests; i++) {
            var request = Requests.free(random, seasons);
            double plannedKm = WheelPlanner.plan(request, List.of(), List.of())
                    .orElseThrow()
                    .distanceKm();
            assertThat(plannedKm)
                    .as("%d: %s", i, request)
                    .isCloseTo(SolverPlan.distanceKm(request).orElseThrow(), within(NEAR_KM + SAME_KM));
        }
    }
}
