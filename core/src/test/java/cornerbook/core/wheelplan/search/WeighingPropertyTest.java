package cornerbook.core.wheelplan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.PlanRules;
import cornerbook.core.wheelplan.WheelState;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The weighed bound against every sequence driven from the definition, and against programs that are solved by hand. */
class WeighingPropertyTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void noSequenceGetsBeyondTheBound() {
        var random = new SplittableRandom(71);
        for (int r = 0; r < 300; r++) {
            var request = RandomRequests.any(random, 2).withRules(PlanRules.TYRES_ONLY);
            var numbers = new SetNumbers(request);
            double bound = new Weighing(numbers).boundThousandKm();
            EverySequence.outcomes(request)
                    .forEach(outcome ->
                            assertThat(outcome.thousandKm()).as("%s", request).isLessThanOrEqualTo(bound + ROUNDING));
        }
    }

    /** The 1 mm tyre lasts 10,000 km at the corner that wears least, 0.1 mm; the others are not the limit. */
    @Test
    void theShallowestWheelAtTheSlowestCornerIsTheLimit() {
        assertThat(bound(List.of(4.0, 11.0, 11.0, 11.0), List.of(0.1, 0.2, 0.2, 0.2)))
                .isCloseTo(10, within(ROUNDING));
    }

    /** 20 mm above the limit together, worn 0.6 mm each thousand km: 33,333 km where each may take any share of the corners. */
    @Test
    void otherwiseTheFourTogetherAre() {
        assertThat(bound(List.of(9.0, 9.0, 7.0, 7.0), List.of(0.1, 0.1, 0.2, 0.2)))
                .isCloseTo(20 / 0.6, within(ROUNDING));
    }

    /** Two shallow tyres, 2 mm together, at the two slow corners, 0.1 and 0.2 mm: 2 / 0.3, before the 18 mm of all four at 1.1 mm. */
    @Test
    void orTwoOfThem() {
        assertThat(bound(List.of(4.0, 4.0, 11.0, 11.0), List.of(0.1, 0.2, 0.4, 0.4)))
                .isCloseTo(2 / 0.3, within(ROUNDING));
    }

    private static double bound(List<Double> depthsMm, List<Double> ratesMmPer1000Km) {
        var corners = Corner.values();
        var wheels = IntStream.range(0, corners.length)
                .mapToObj(i -> new WheelState("wheel " + i, "any", false, List.of(depthsMm.get(i)), corners[i]))
                .toList();
        var rates = new EnumMap<Corner, List<Double>>(Corner.class);
        for (var corner : corners) {
            rates.put(corner, List.of(ratesMmPer1000Km.get(corner.ordinal())));
        }
        return new Weighing(
                        new SetNumbers(new PlanRequest(wheels, rates, Map.of(), 3, List.of(5.0), PlanRules.TYRES_ONLY)))
                .boundThousandKm();
    }
}
