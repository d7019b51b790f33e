package cornerbook.core.wheelplan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.wheelplan.PlanRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All three levels against every sequence driven from the definition. */
class ExhaustiveTest {
    private static final double SAME_THOUSAND_KM = 1e-6;
    private static final double SAME_MM = 1e-6;

    @ParameterizedTest(name = "{1} requests over {0} seasons, seed {2}")
    @CsvSource({"1, 3000, 11", "2, 1500, 12", "3, 250, 13"})
    void findsTheOptimumOfEverySequence(int seasons, int requests, long seed) {
        var random = new SplittableRandom(seed);
        int solved = 0;
        for (int r = 0; r < requests; r++) {
            var request = RandomRequests.any(random, seasons);
            var found = PlanSearch.best(request);
            var expected = EverySequence.best(request);
            assertThat(found.isPresent()).as("request %d: %s", r, request).isEqualTo(expected.isPresent());
            if (found.isPresent()) {
                solved++;
                agrees(request, found.get(), expected.orElseThrow());
            }
        }
        assertThat(solved).as("requests that have a plan").isGreaterThan(requests / 2);
    }

    @ParameterizedTest(name = "{1} requests of five wheels over {0} seasons, seed {2}")
    @CsvSource({"1, 1500, 14", "2, 200, 15"})
    void findsTheOptimumOfFiveWheels(int seasons, int requests, long seed) {
        var random = new SplittableRandom(seed);
        int solved = 0;
        int spareIn = 0;
        for (int r = 0; r < requests; r++) {
            var request = RandomRequests.withSpare(random, seasons);
            var found = PlanSearch.best(request);
            var expected = EverySequence.best(request);
            assertThat(found.isPresent()).as("request %d: %s", r, request).isEqualTo(expected.isPresent());
            if (found.isPresent()) {
                solved++;
                spareIn += found.get().assignments().getLast() < 24 ? 0 : 1;
                agrees(request, found.get(), expected.orElseThrow());
            }
        }
        assertThat(solved).as("requests that have a plan").isGreaterThan(requests / 2);
        assertThat(spareIn).as("plans that take the spare in").isGreaterThan(requests / 6);
    }

    private static void agrees(PlanRequest request, PlanSearch.Sequence found, EverySequence.Outcome best) {
        var driven = EverySequence.drive(request, places(found, request.wheels().size()))
                .orElseThrow();
        assertThat(found.thousandKm()).as("distance of %s", request).isCloseTo(driven.thousandKm(), within(1e-9));
        assertThat(found.spreadMm()).as("spread of %s", request).isCloseTo(driven.spreadMm(), within(1e-9));
        assertThat(found.moves()).as("moves of %s", request).isEqualTo(driven.moves());
        assertThat(found.thousandKm())
                .as("distance of %s", request)
                .isBetween(
                        best.thousandKm() - PlanSearch.SAME_THOUSAND_KM - SAME_THOUSAND_KM,
                        best.thousandKm() + SAME_THOUSAND_KM);
        assertThat(found.spreadMm())
                .as("spread of %s", request)
                .isBetween(best.spreadMm() - SAME_MM, best.spreadMm() + PlanSearch.SAME_SPREAD_MM + SAME_MM);
        assertThat(found.moves()).as("moves of %s", request).isEqualTo(best.moves());
    }

    static List<List<Integer>> places(PlanSearch.Sequence sequence, int wheels) {
        var places = new ArrayList<List<Integer>>();
        for (int assignment : sequence.assignments()) {
            places.add(IntStream.range(0, wheels)
                    .mapToObj(wheel -> Assignments.corner(assignment, wheel))
                    .toList());
        }
        return places;
    }
}
