package cornerbook.core.wheelplan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.PlanRules;
import cornerbook.core.wheelplan.Replacement;
import cornerbook.core.wheelplan.Replacement.Kind;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WheelState;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Even wear of 0.2 mm per 1000 km everywhere, so that each distance follows by hand. */
class ReplacementOptionsTest {
    private static final double SAME_KM = 1e-6;
    private static final List<Double> TEN_EACH = List.of(10.0, 10.0, 10.0);

    /** 6 mm down to 4 is 10,000 km; new tyres of 8 mm run 20,000 more. */
    @Test
    void fourNewTyresRunTheirOwnLife() {
        var options = ReplacementOptions.of(request(6, null), 8);
        assertThat(option(options, Kind.NONE, 0).distanceKm()).isCloseTo(10_000, within(SAME_KM));
        assertThat(option(options, Kind.ALL_FOUR, 1).distanceKm()).isCloseTo(20_000, within(SAME_KM));
        var second = option(options, Kind.ALL_FOUR, 2);
        assertThat(second.distanceKm()).isCloseTo(30_000, within(SAME_KM));
        assertThat(second.lasts()).isTrue();
        assertThat(options).noneMatch(option -> option.season() > 2);
    }

    /** The old pair ends the set at 10,000 km wherever the new one goes. */
    @Test
    void twoNewTyresCannotOutlastTheOldPair() {
        var front = option(ReplacementOptions.of(request(6, null), 8), Kind.FRONT_PAIR, 1);
        assertThat(front.distanceKm()).isCloseTo(10_000, within(SAME_KM));
        assertThat(front.binding()).isEmpty();
        assertThat(front.kind().tyres()).isEqualTo(2);
    }

    /** 8 mm beside 6 mm is more than 1.5 mm: two are not allowed, four are. */
    @Test
    void allWheelDriveAsksForFour() {
        var limit = new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, 1.5);
        var options = ReplacementOptions.of(request(6, limit), 8);
        var pair = option(options, Kind.REAR_PAIR, 1);
        assertThat(pair.distanceKm()).isZero();
        assertThat(pair.binding()).containsExactly(Rule.ALL_WHEEL);
        assertThat(option(options, Kind.ALL_FOUR, 1).distanceKm()).isCloseTo(20_000, within(SAME_KM));
    }

    /** 2/32 in of tread is 10 mm of circumference (trade literature), to the digits given. */
    @Test
    void bothKindsOfAllWheelLimitAreOne() {
        var tread = new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, 2 * 25.4 / 32);
        var circumference = new AllWheelLimit(AllWheelLimit.Kind.ROLLING_CIRCUMFERENCE, 10);
        assertThat(circumference.depthMm()).isCloseTo(tread.depthMm(), within(0.01));
    }

    private static Replacement option(List<Replacement> options, Kind kind, int season) {
        return options.stream()
                .filter(option -> option.kind() == kind && option.season() == season)
                .findFirst()
                .orElseThrow();
    }

    private static PlanRequest request(double depthMm, @Nullable AllWheelLimit allWheel) {
        var wheels = new ArrayList<WheelState>();
        for (var corner : Corner.values()) {
            wheels.add(new WheelState(corner.name(), "225/55R18", false, List.of(depthMm), corner));
        }
        var rates = Map.of(
                Corner.LF, List.of(0.2), Corner.RF, List.of(0.2), Corner.LR, List.of(0.2), Corner.RR, List.of(0.2));
        return new PlanRequest(wheels, rates, Map.of(), 4, TEN_EACH, new PlanRules(true, true, null, allWheel, null));
    }
}
