package cornerbook.core.torque.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RetorqueTest {
    private static final Reading TORQUE = Cars.reading(Measure.WHEEL_TORQUE, Corner.LF, "S-LF", null, 140);

    @Test
    void wheelsThatStandElsewhereAskForOne() {
        assertThat(after(Cars.at("W-"), List.of())).isPresent();
    }

    @Test
    void theSameWheelsOffAndOnAgainAskForOne() {
        assertThat(after(Cars.at("S-"), List.of(TORQUE))).isPresent();
        assertThat(after(Map.of(), List.of(TORQUE))).isPresent();
    }

    @Test
    void wheelsThatNobodyTouchedAskForNone() {
        assertThat(after(Cars.at("S-"), List.of())).isEmpty();
        assertThat(after(Map.of(), List.of())).isEmpty();
    }

    /** Fasteners that were ticked as tightened, though nobody read a torque. */
    @Test
    void tickedFastenersAskForOne() {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("S-"), List.of())
                .withTightened(Set.of(Corner.LF));
        assertThat(Retorque.after(Cars.history(visit), visit)).isPresent();
    }

    @Test
    void anotherWheelAtACornerIsNotTightened() {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("S-"), List.of())
                .withTightened(Set.of(Corner.LF, Corner.RF));
        var changed = new EnumMap<>(Cars.at("S-"));
        changed.put(Corner.LF, "W-LF");
        assertThat(visit.withLeftOn(changed).tightened()).containsExactly(Corner.RF);
    }

    /** A date or an odometer that is put right loosens no wheel. */
    @Test
    void theVisitStaysTightenedWhenItsOdometerIsPutRight() {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("S-"), List.of())
                .withTightened(Set.of(Corner.LF));
        var right = visit.withOdometer(Cars.AUTUMN.minusDays(1), 47_900);
        assertThat(right.tightened()).containsExactly(Corner.LF);
        assertThat(Retorque.after(Cars.history(right), right)).isPresent();
    }

    private static Optional<Retorque> after(Map<Corner, String> leftOn, List<Reading> readings) {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), leftOn, readings);
        return Retorque.after(Cars.history(visit), visit);
    }
}
