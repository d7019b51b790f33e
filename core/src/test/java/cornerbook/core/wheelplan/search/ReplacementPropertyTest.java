package cornerbook.core.wheelplan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Replacement;
import cornerbook.core.wheelplan.Replacement.Kind;
import cornerbook.core.wheelplan.WheelState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each purchase against all sequences before it, each way to choose its tyres, and all sequences after it, from the definition. */
class ReplacementPropertyTest {
    private static final double NEW_MM = 8;
    private static final double SAME_KM = 2;

    @ParameterizedTest(name = "{1} requests of {2} wheels over {0} seasons, seed {3}")
    @CsvSource({"2, 120, 4, 61", "3, 5, 4, 62", "2, 5, 5, 63"})
    void isTheLongestOfAllWaysBeforeAndAfter(int seasons, int requests, int wheels, long seed) {
        var random = new SplittableRandom(seed);
        int later = 0;
        for (int r = 0; r < requests; r++) {
            var request = wheels == 4 ? RandomRequests.any(random, seasons) : RandomRequests.withSpare(random, seasons);
            for (var option : ReplacementOptions.of(request, NEW_MM)) {
                if (option.kind() != Kind.NONE && option.season() <= 2) {
                    later += option.season() > 1 ? 1 : 0;
                    assertThat(option.distanceKm())
                            .as("%s of %s", option, request)
                            .isCloseTo(longestKm(request, option), within(SAME_KM));
                }
            }
        }
        assertThat(later).as("purchases in later seasons").isGreaterThan(requests);
    }

    private static double longestKm(PlanRequest request, Replacement option) {
        int before = option.season() - 1;
        double longest = 0;
        double start = sum(request.seasonsThousandKm().subList(0, before));
        for (var left : EverySequence.before(request, before).entrySet()) {
            var stands = left.getKey().isEmpty()
                    ? lastPlaces(request)
                    : left.getKey().getLast();
            for (var renewed : choices(request, option.kind(), stands)) {
                longest = Math.max(longest, start + endThousandKm(rest(request, left.getValue(), renewed, before)));
            }
        }
        return 1000 * longest;
    }

    private static List<Integer> lastPlaces(PlanRequest request) {
        return IntStream.range(0, request.wheels().size())
                .mapToObj(i -> {
                    var last = i == 4 ? null : request.wheels().get(i).lastCorner();
                    return last == null ? i : last.ordinal();
                })
                .toList();
    }

    private static List<List<Integer>> choices(PlanRequest request, Kind kind, List<Integer> stands) {
        var all = IntStream.range(0, request.wheels().size()).boxed().toList();
        return switch (kind) {
            case NONE -> List.of(List.of());
            case ONE_TYRE -> all.stream().map(List::of).toList();
            case FRONT_PAIR ->
                List.of(all.stream().filter(i -> stands.get(i) < 2).toList());
            case REAR_PAIR ->
                List.of(all.stream()
                        .filter(i -> stands.get(i) == 2 || stands.get(i) == 3)
                        .toList());
            case ALL_FOUR -> List.of(all.stream().filter(i -> stands.get(i) < 4).toList());
        };
    }

    private static PlanRequest rest(PlanRequest request, double[][] leftMm, List<Integer> renewed, int before) {
        var wheels = new ArrayList<WheelState>();
        for (int i = 0; i < leftMm.length; i++) {
            var wheel = request.wheels().get(i);
            var depths = new ArrayList<Double>();
            for (double left : leftMm[i]) {
                depths.add(left + request.limitMm());
            }
            wheels.add(new WheelState(
                    wheel.tag(),
                    wheel.tyreSize(),
                    wheel.directional(),
                    renewed.contains(i) ? Collections.nCopies(depths.size(), NEW_MM) : depths,
                    i < 4 && wheel.lastCorner() == null ? Corner.values()[i] : wheel.lastCorner()));
        }
        var seasons = request.seasonsThousandKm();
        return new PlanRequest(
                wheels,
                request.ratesMmPer1000Km(),
                request.sizeAt(),
                request.limitMm(),
                seasons.subList(before, seasons.size()),
                request.rules());
    }

    /** Of as many seasons as the rules can be kept for. */
    private static double endThousandKm(PlanRequest rest) {
        int asked = rest.seasonsThousandKm().size();
        for (int seasons = asked; seasons > 0; seasons--) {
            var best = EverySequence.best(rest.withSeasons(seasons));
            if (best.isPresent()) {
                double within = sum(rest.seasonsThousandKm().subList(0, seasons));
                double thousandKm = best.get().thousandKm();
                return seasons < asked ? Math.min(thousandKm, within) : thousandKm;
            }
        }
        return 0;
    }

    private static double sum(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }
}
