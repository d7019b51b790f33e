package cornerbook.core.season.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Mileage;
import cornerbook.core.car.Visit;
import cornerbook.core.say.Amount;
import cornerbook.core.season.SeasonSaid;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OdometerRangeTest {
    private static final Visit SPRING = visit("spring", LocalDate.of(2026, 4, 15), 38_000);

    private static Visit visit(String id, LocalDate date, double odometerKm) {
        return new Visit(id, date, odometerKm, Map.of(), Map.of(), List.of());
    }

    private static CarHistory car(Visit... visits) {
        return Cars.history(visits);
    }

    private static boolean asks(CarHistory car, Visit typed) {
        return OdometerRange.of(car, typed)
                .filter(range -> !range.contains(typed.odometerKm()))
                .isPresent();
    }

    /**
     * 40 km a day for 182 days; cars and seasons differ by the factors of 15 and of 8 km in 40, whose squares multiply, and 3.09
     * of that is the 0.999 quantile.
     */
    @Test
    void whatIsExpectedFollowsFromHowFarTheCarRuns() {
        var typed = visit("autumn", LocalDate.of(2026, 10, 14), 382_000);
        double sdKm = 40 * Math.sqrt((1 + Math.pow(15 / 40.0, 2)) * (1 + Math.pow(8 / 40.0, 2)) - 1);
        assertThat(OdometerRange.of(car(SPRING), typed)).hasValueSatisfying(range -> {
            assertThat(range.lowestKm()).isEqualTo(38_000);
            assertThat(range.highestKm()).isCloseTo(38_000 + 182 * (40 + 3.090 * sdKm) + 1_500, within(1e-6));
            assertThat(range.question())
                    .isEqualTo(new SeasonSaid.OdometerExpected(
                            Amount.of(38_000, "km"), SPRING.date(), Amount.of(range.highestKm(), "km")));
        });
    }

    @Test
    void aDigitTooManyAndAnOdometerThatRunsBackAreAskedAbout() {
        assertThat(asks(car(SPRING), visit("autumn", LocalDate.of(2026, 10, 14), 382_000)))
                .isTrue();
        assertThat(asks(car(SPRING), visit("autumn", LocalDate.of(2026, 10, 14), 37_999)))
                .isTrue();
    }

    @Test
    void whatCarsRunAndWhatComesFirstIsNot() {
        assertThat(asks(car(SPRING), visit("autumn", LocalDate.of(2026, 10, 14), 45_000)))
                .isFalse();
        assertThat(asks(car(SPRING), visit("autumn", LocalDate.of(2026, 10, 14), 38_000)))
                .isFalse();
        assertThat(asks(car(), visit("first", SPRING.date(), 382_000))).isFalse();
        assertThat(asks(car(SPRING), SPRING)).isFalse();
    }

    /** It begins at zero (49 U.S.C. 32704), and what the old one read is an entry of its own. */
    @Test
    void aReplacedOdometerMayReadLess() {
        var replaced = visit("autumn", LocalDate.of(2026, 10, 14), 900)
                .withReadings(List.of(Cars.reading(Measure.REPLACED_ODOMETER, null, null, null, 44_000)));
        assertThat(OdometerRange.of(car(SPRING), replaced)).isEmpty();
        assertThat(new Mileage(List.of(SPRING, replaced)).sinceFirstKm(replaced))
                .isEqualTo(6_900);
        assertThat(new Mileage(List.of(SPRING, replaced)).doubts()).isEmpty();
    }

    @Test
    void aVisitThatComesInLateIsHeldAgainstTheOneBeforeIt() {
        var autumn = visit("autumn", LocalDate.of(2026, 10, 14), 382_000);
        assertThat(asks(car(SPRING, autumn), visit("summer", LocalDate.of(2026, 7, 1), 41_000)))
                .isFalse();
        assertThat(asks(car(SPRING, autumn), visit("summer", LocalDate.of(2026, 7, 1), 141_000)))
                .isTrue();
    }

    /** 344,000 km in a day would lift the average of all seasons beyond what the model takes. */
    @Test
    void anOdometerThatIsWrongSaysNothingOfHowFarTheCarRuns() {
        var nextDay = visit("wrong", SPRING.date().plusDays(1), 382_000);
        assertThat(asks(car(SPRING, nextDay), visit("later", LocalDate.of(2026, 10, 14), 390_000)))
                .isFalse();
        assertThat(asks(car(SPRING, nextDay), visit("later", LocalDate.of(2026, 10, 14), 490_000)))
                .isTrue();
    }
}
