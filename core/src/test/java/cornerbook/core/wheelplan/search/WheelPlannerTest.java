package cornerbook.core.wheelplan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.PlanRules;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.WheelState;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WheelPlannerTest {
    private static final Map<Axle, String> ONE_SIZE = Map.of(Axle.FRONT, "225/55R18", Axle.REAR, "225/55R18");

    /**
     * With one depth per wheel and one rate per axle the best bottleneck is known: sort both and pair the deepest with
     * the fastest (the exchange argument for bottleneck assignment of sorted ratios).
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void deepestGoesWhereWearIsFastest(long seed) {
        var random = new SplittableRandom(seed);
        var wheels = new ArrayList<WheelState>();
        for (var corner : Corner.values()) {
            wheels.add(
                    new WheelState(corner.name(), "225/55R18", false, List.of(4.5 + 4 * random.nextDouble()), corner));
        }
        var rates = new EnumMap<Corner, List<Double>>(Corner.class);
        for (var corner : Corner.values()) {
            rates.put(corner, List.of(0.1 + 0.2 * random.nextDouble()));
        }
        var plan = plan(wheels, rates, ONE_SIZE);

        var depths = wheels.stream().map(w -> w.depthsMm().getFirst()).sorted().toList();
        var sortedRates = rates.values().stream().map(List::getFirst).sorted().toList();
        double expectedKm = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            expectedKm = Math.min(expectedKm, 1000 * (depths.get(i) - 4) / sortedRates.get(i));
        }
        assertThat(plan.distanceKm()).isCloseTo(expectedKm, within(1.0));
        assertThat(plan.distanceKm()).isGreaterThanOrEqualTo(plan.distanceUnmovedKm() - 1);
    }

    @Test
    void directionalTyresStayOnTheirSide() {
        var wheels = wheels(true, 5, 8, 5, 8);
        var plan = plan(wheels, evenRates(0.3, 0.1), ONE_SIZE);
        plan.wheelAt()
                .forEach((corner, tag) -> assertThat(Corner.valueOf(tag).side()).isEqualTo(corner.side()));
    }

    @Test
    void staggeredSizesStayOnTheirAxle() {
        var wheels = List.of(
                new WheelState("LF", "245/40R19", false, List.of(5.0), Corner.LF),
                new WheelState("RF", "245/40R19", false, List.of(6.0), Corner.RF),
                new WheelState("LR", "275/35R19", false, List.of(8.0), Corner.LR),
                new WheelState("RR", "275/35R19", false, List.of(8.0), Corner.RR));
        var sizes = Map.of(Axle.FRONT, "245/40R19", Axle.REAR, "275/35R19");
        var plan = plan(wheels, evenRates(0.3, 0.1), sizes);
        plan.wheelAt()
                .forEach((corner, tag) -> assertThat(Corner.valueOf(tag).axle()).isEqualTo(corner.axle()));
    }

    /** No wheel goes back to where it ran when none ever ran. */
    @Test
    void aSetThatNeverRanIsPlacedAndNotSentBack() {
        var unused = wheels(false, 7, 7, 7, 7).stream()
                .map(wheel -> new WheelState(wheel.tag(), wheel.tyreSize(), false, wheel.depthsMm(), null))
                .toList();
        assertThat(plan(unused, evenRates(0.2, 0.2), ONE_SIZE).reasons())
                .first()
                .isEqualTo(PlanReason.Plainly.NONE_RAN_YET);
    }

    @Test
    void evenWheelsAreLeftWhereTheyAre() {
        var plan = plan(wheels(false, 7, 7, 7, 7), evenRates(0.2, 0.2), ONE_SIZE);
        plan.wheelAt().forEach((corner, tag) -> assertThat(tag).isEqualTo(corner.name()));
        assertThat(plan.reasons()).first().isEqualTo(PlanReason.Plainly.NO_MOVE_HELPS);
    }

    /** Five wheels with 2 mm each, four of which wear 0.2 mm per 1000 km: 10 mm over 0.8, each wheel resting one season of five. */
    @Test
    void aSpareThatTakesPartSharesTheWear() {
        var wheels = new ArrayList<>(wheels(false, 6, 6, 6, 6));
        wheels.add(new WheelState("spare", "225/55R18", false, List.of(6.0), null));
        var seasons = List.of(2.5, 2.5, 2.5, 2.5, 2.5);
        var request = new PlanRequest(wheels, evenRates(0.2, 0.2), ONE_SIZE, 4, seasons, PlanRules.TYRES_ONLY);
        var plan = WheelPlanner.plan(request, List.of(), List.of()).orElseThrow();
        assertThat(plan.distanceKm()).isCloseTo(12_500, within(1e-6));
        assertThat(plan.distanceUnmovedKm()).isCloseTo(10_000, within(1e-6));
        assertThat(plan.spreadMm()).isCloseTo(0, within(1e-9));
        var rests = plan.seasons().stream()
                .flatMap(season -> wheels.stream()
                        .map(WheelState::tag)
                        .filter(tag -> !season.wheelAt().containsValue(tag)))
                .toList();
        assertThat(rests).containsExactlyInAnyOrder("LF", "RF", "LR", "RR", "spare");
    }

    private static WheelPlan plan(List<WheelState> wheels, Map<Corner, List<Double>> rates, Map<Axle, String> sizes) {
        var request = new PlanRequest(wheels, rates, sizes, 4, List.of(8.0), PlanRules.TYRES_ONLY);
        return WheelPlanner.plan(request, List.of(), List.of()).orElseThrow();
    }

    private static List<WheelState> wheels(boolean directional, double... depthsMm) {
        var wheels = new ArrayList<WheelState>();
        for (var corner : Corner.values()) {
            wheels.add(new WheelState(
                    corner.name(), "225/55R18", directional, List.of(depthsMm[corner.ordinal()]), corner));
        }
        return wheels;
    }

    private static Map<Corner, List<Double>> evenRates(double front, double rear) {
        return Map.of(
                Corner.LF,
                List.of(front),
                Corner.RF,
                List.of(front),
                Corner.LR,
                List.of(rear),
                Corner.RR,
                List.of(rear));
    }
}
