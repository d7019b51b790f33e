package cornerbook.bench.wheelplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.wheelplan.SeasonPlan;
import cornerbook.core.wheelplan.WheelPlanner;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The planner against a general-purpose constraint solver (com.google.ortools, CP-SAT), all three levels. */
class SolverReferenceTest {
    /** The solver counts whole metres, and the planner may stop 1 km short of the longest to even out the wheels. */
    private static final double SAME_KM = 0.002;

    private static final double NEAR_KM = 1;
    private static final double SAME_MM = 1e-5;
    private static final double NEAR_MM = 0.01;

    @ParameterizedTest(name = "{1} requests over {0} seasons, seed {2}")
    @CsvSource({"1, 120, 21", "2, 60, 22", "3, 20, 23", "4, 5, 24"})
    void provesTheSameOptimum(int seasons, int requests, long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < requests; i++) {
            var request = Requests.any(random, seasons);
            var plan = WheelPlanner.plan(request, List.of(), List.of());
            var solved = SolverPlan.best(request);
            boolean planned = plan.isPresent() && plan.get().seasonsPlanned() == seasons;
            assertThat(planned).as("%d: %s", i, request).isEqualTo(solved.isPresent());
            if (planned) {
                var found = plan.get();
                var best = solved.orElseThrow();
                assertThat(found.distanceKm())
                        .as("%d: %s", i, request)
                        .isBetween(best.distanceKm() - NEAR_KM - SAME_KM, best.distanceKm() + SAME_KM);
                assertThat(found.spreadMm())
                        .as("%d: %s", i, request)
                        .isBetween(best.spreadMm() - SAME_MM, best.spreadMm() + NEAR_MM + SAME_MM);
                long moves =
                        found.seasons().stream().mapToLong(SeasonPlan::moves).sum();
                assertThat(moves).as("%d: %s", i, request).isEqualTo(best.moves());
            }
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
