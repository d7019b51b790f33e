package cornerbook.core.torque.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.time.LocalDate;
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

    /** Where nobody has looked up the fasteners the wheels settle all the same: within 50 to 100 km (common practice, no source). */
    @Test
    void wheelsWithUnknownFastenersAreTightenedAgainAfterTheUsualDistance() {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("W-"), List.of());
        var due = Retorque.after(Cars.history(Cars.withFastener(null), visit), visit);
        assertThat(due).hasValueSatisfying(retorque -> {
            assertThat(retorque.dueOdometerKm()).isBetween(48_050.0, 48_100.0);
            assertThat(retorque.torqueNm()).isNull();
        });
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

    /** The new odometer reads 20 km; the car ran 30 or 90 km since the wheels went on. */
    @Test
    void aReplacedOdometerNeitherHidesNorMakesTheDistance() {
        var fitted = fitted();
        var day = fitted.date().plusDays(1);
        for (double run : List.of(30.0, 90.0)) {
            var ended = Cars.reading(Measure.REPLACED_ODOMETER, null, null, null, fitted.odometerKm() + run - 20);
            var came = new Visit("came", day, 20, Cars.at("W-"), Map.of(), List.of(ended));
            assertThat(dueOnArrival(fitted, came).isPresent()).isEqualTo(run > 80);
        }
    }

    /** 80 km after the wheels went on, as the car's specification asks. */
    @Test
    void wheelsThatAreStillOnWereDueByTheirDistanceOrTheirDay() {
        var fitted = fitted();
        assertThat(dueOnArrival(fitted, came(fitted.date().plusDays(1), fitted.odometerKm() + 79, "W-")))
                .isEmpty();
        assertThat(dueOnArrival(fitted, came(fitted.date().plusDays(1), fitted.odometerKm() + 80, "W-")))
                .hasValueSatisfying(due -> assertThat(due.visitId()).isEqualTo(fitted.id()));
        assertThat(dueOnArrival(fitted, came(fitted.date().plusDays(100), fitted.odometerKm(), "W-")))
                .isPresent();
    }

    @Test
    void otherWheelsOrWheelsThatStandElsewhereAreNotThoseThatWereDue() {
        var fitted = fitted();
        assertThat(dueOnArrival(fitted, came(fitted.date().plusDays(100), 60_000, "S-")))
                .isEmpty();
        var crossed = new EnumMap<>(Cars.at("W-"));
        crossed.put(Corner.LF, "W-RF");
        crossed.put(Corner.RF, "W-LF");
        var came = new Visit("later", fitted.date().plusDays(100), 60_000, crossed, Map.of(), List.of());
        assertThat(dueOnArrival(fitted, came)).isEmpty();
    }

    /** A visit between that tightened them asks for one of its own. */
    @Test
    void theLastVisitThatTouchedTheWheelsCounts() {
        var fitted = fitted();
        var tightened = new Visit(
                        "between", fitted.date().plusDays(50), 49_000, Cars.at("W-"), Cars.at("W-"), List.of())
                .withTightened(Set.of(Corner.LF));
        var came = came(tightened.date().plusDays(1), 49_010, "W-");
        assertThat(Retorque.dueOnArrival(Cars.history(fitted, tightened, came), came))
                .isEmpty();
    }

    private static Visit fitted() {
        return new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("W-"), List.of());
    }

    private static Visit came(LocalDate day, double odometerKm, String wheels) {
        return new Visit("later", day, odometerKm, Cars.at(wheels), Map.of(), List.of());
    }

    private static Optional<Retorque> dueOnArrival(Visit fitted, Visit came) {
        return Retorque.dueOnArrival(Cars.history(fitted, came), came);
    }

    private static Optional<Retorque> after(Map<Corner, String> leftOn, List<Reading> readings) {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), leftOn, readings);
        return Retorque.after(Cars.history(visit), visit);
    }
}
