package cornerbook.core.coming.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.coming.DueMatter;
import cornerbook.core.coming.Matter;
import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * For what an invented car is to come back after it went on its winter wheels on 20 October 2026. Weeks by 49 CFR 574.5: 4216 begins on
 * 16 October 2016 and 4316 on 23 October 2016; ten years of 365.25 days end on 17 and 24 October 2026.
 */
class DueMattersTest {
    private static final LocalDate AUTUMN = Cars.AUTUMN;
    private static final LocalDate SPRING = LocalDate.of(2027, 4, 15);
    private static final DueMatter NEXT_VISIT = new DueMatter(Matter.NEXT_VISIT, SPRING);

    private static List<DueMatter> due(@Nullable String winterTin, @Nullable String summerTin, Reading... readings) {
        var car = Cars.changeOver(7, 7, List.of(readings));
        var sets = car.sets().stream()
                .map(set -> dated(set, set.season() == SeasonKind.WINTER ? winterTin : summerTin))
                .toList();
        var history = new CarHistory(car.vehicle(), car.customer(), sets, car.visits());
        return new Assessor(Cars.LIMITS)
                .outcome(history, history.visits().getLast().id())
                .matters();
    }

    private static WheelSet dated(WheelSet set, @Nullable String tin) {
        return new WheelSet(
                set.id(),
                set.season(),
                set.storePlace(),
                set.wheels().stream().map(wheel -> dated(wheel, tin)).toList());
    }

    private static Wheel dated(Wheel wheel, @Nullable String tin) {
        var tyre = wheel.tyre();
        return new Wheel(
                wheel.tag(),
                new Tyre(tyre.model(), tyre.size(), tyre.loadIndex(), tyre.speedSymbol(), tin, false, false, 8.0),
                null);
    }

    @Test
    void aSoundCarComesBackForItsChangeOver() {
        assertThat(due("3524", "3524")).containsExactly(NEXT_VISIT);
        assertThat(due(null, null)).as("of unknown age").containsExactly(NEXT_VISIT);
    }

    @Test
    void tyresThatComeToTheirAgeInTheSeasonAreDueOnThatDay() {
        assertThat(due("4316", "3524"))
                .containsExactly(new DueMatter(Matter.TYRE_AGE, LocalDate.of(2026, 10, 24)), NEXT_VISIT);
    }

    @Test
    void tyresThatAreTooOldAreDueSinceTheVisitAndThoseInTheStoreWhenTheyAreFitted() {
        assertThat(due("4216", "3524")).containsExactly(new DueMatter(Matter.TYRE_AGE, AUTUMN), NEXT_VISIT);
        assertThat(due("3524", "4216")).containsExactly(new DueMatter(Matter.TYRE_AGE, SPRING), NEXT_VISIT);
        assertThat(due("4216", "4216"))
                .as("the first of both")
                .containsExactly(new DueMatter(Matter.TYRE_AGE, AUTUMN), NEXT_VISIT);
    }

    /** 49 CFR 571.116 S5.1.2: DOT 4 boils at 155 °C when wet. */
    @Test
    void fluidThatBoilsTooEarlyIsDueSinceTheVisit() {
        assertThat(due("3524", "3524", boils(154)))
                .containsExactly(new DueMatter(Matter.BRAKE_FLUID, AUTUMN), NEXT_VISIT);
        assertThat(due("3524", "3524", boils(155))).containsExactly(NEXT_VISIT);
    }

    private static Reading boils(double celsius) {
        return Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, celsius);
    }
}
