package cornerbook.core.wheelplan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.PlanRules;
import cornerbook.core.wheelplan.RotationPattern;
import cornerbook.core.wheelplan.WearScenario;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.WheelState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GainTest {
    private static final double SAME_KM = 1e-6;

    /**
     * Front wears 0.3, rear 0.1 mm per 1000 km; 8 mm down to 4. Unmoved: 4/0.3 = 13,333 km. Exchanged after 8,000 km:
     * the front pair has 1.6 mm left for the rear, the rear pair 3.2 mm for the front, which lasts 10,667 km more.
     */
    @Test
    void gainIsTheDifferenceByHand() {
        var plan = plan(List.of(wear(0.3, 0.1)));
        var gain = plan.gains().getFirst();
        assertThat(plan.distanceKm()).isCloseTo(8_000 + 3.2 / 0.3 * 1000, within(SAME_KM));
        assertThat(gain.otherKm()).isCloseTo(4 / 0.3 * 1000, within(SAME_KM));
        var interval = Objects.requireNonNull(gain.interval());
        assertThat(interval.lowKm()).isCloseTo(gain.gainKm(), within(SAME_KM));
        assertThat(interval.highKm()).isCloseTo(gain.gainKm(), within(SAME_KM));
        assertThat(plan.wheelAt()).isNotEmpty();
        assertThat(plan.reasons()).first().isInstanceOfSatisfying(PlanReason.RunsLonger.class, longer -> {
            assertThat(longer.gain().value()).isCloseTo(gain.gainKm(), within(SAME_KM));
            assertThat(longer.spread()).as("both ends read alike").isNull();
        });
    }

    /** The slower front still gains, by less: between the two lies a range that is worth telling. */
    @Test
    void gainIsToldWithItsRangeWhereTheWearIsNotSure() {
        assertThat(plan(List.of(wear(0.3, 0.1), wear(0.26, 0.1))).reasons())
                .first()
                .isInstanceOfSatisfying(
                        PlanReason.RunsLonger.class,
                        longer -> assertThat(longer.spread()).isNotNull());
    }

    /** The rear pair is a little deeper and the front, by all that is known, wears a little faster: perhaps. */
    @Test
    void wheelsStayWhereTheGainMayBeNone() {
        var random = new SplittableRandom(51);
        var scenarios = new ArrayList<WearScenario>();
        for (int n = 0; n < 200; n++) {
            scenarios.add(new WearScenario(
                    List.of(List.of(7.8), List.of(7.8), List.of(8.0), List.of(8.0)),
                    wear(0.1 + 0.22 * random.nextDouble(), 0.1 + 0.2 * random.nextDouble())
                            .ratesMmPer1000Km()));
        }
        var request = request(List.of(8.0), 7.8, wear(0.21, 0.2).ratesMmPer1000Km());
        var plan = WheelPlanner.plan(request, List.of(), scenarios).orElseThrow();
        assertThat(WheelPlanner.plan(request, List.of(), List.of())
                        .orElseThrow()
                        .distanceKm())
                .isGreaterThan(plan.distanceKm());
        plan.wheelAt().forEach((corner, tag) -> assertThat(tag).isEqualTo(corner.name()));
        assertThat(plan.seasons())
                .allSatisfy(season -> assertThat(season.moves()).isZero());
        assertThat(plan.distanceKm()).isEqualTo(plan.distanceUnmovedKm());
        assertThat(plan.reasons()).first().isInstanceOf(PlanReason.MovingGainsLittle.class);
    }

    @Test
    void customaryPatternsFollowDriveAndTyres() {
        assertThat(RotationPattern.customary(DriveLayout.FRONT, false, false))
                .containsExactly(RotationPattern.FORWARD_CROSS);
        assertThat(RotationPattern.customary(DriveLayout.ALL, false, false))
                .containsExactly(RotationPattern.REARWARD_CROSS);
        assertThat(RotationPattern.customary(DriveLayout.REAR, true, false)).containsExactly(RotationPattern.SAME_SIDE);
        assertThat(RotationPattern.customary(DriveLayout.REAR, false, true)).containsExactly(RotationPattern.ACROSS);
        assertThat(RotationPattern.customary(DriveLayout.REAR, true, true)).isEmpty();
    }

    private static WheelPlan plan(List<WearScenario> scenarios) {
        var request = request(List.of(8.0, 8.0), 8, wear(0.3, 0.1).ratesMmPer1000Km());
        return WheelPlanner.plan(request, List.of(RotationPattern.FORWARD_CROSS), scenarios)
                .orElseThrow();
    }

    private static PlanRequest request(List<Double> seasons, double frontMm, Map<Corner, List<Double>> rates) {
        var wheels = new ArrayList<WheelState>();
        for (var corner : Corner.values()) {
            var depths = List.of(corner.axle() == Axle.FRONT ? frontMm : 8.0);
            wheels.add(new WheelState(corner.name(), "225/55R18", false, depths, corner));
        }
        return new PlanRequest(wheels, rates, Map.of(), 4, seasons, PlanRules.TYRES_ONLY);
    }

    private static WearScenario wear(double front, double rear) {
        var rates = new EnumMap<Corner, List<Double>>(Corner.class);
        rates.put(Corner.LF, List.of(front));
        rates.put(Corner.RF, List.of(front));
        rates.put(Corner.LR, List.of(rear));
        rates.put(Corner.RR, List.of(rear));
        return new WearScenario(Collections.nCopies(4, List.of(8.0)), rates);
    }
}
