package cornerbook.core.season.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Visit;
import cornerbook.core.say.Amount;
import cornerbook.core.season.SeasonSaid;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OdometerDoubtTest {
    private static final Visit SPRING = visit("spring", LocalDate.of(2026, 4, 15), 38_000);

    private static Visit visit(String id, LocalDate date, double odometerKm) {
        return new Visit(id, date, odometerKm, Map.of(), Map.of(), List.of());
    }

    private static CarHistory car(Visit... visits) {
        return Cars.history(visits);
    }

    @Test
    void aDigitTooManyIsAskedAboutWithWhatItWouldMean() {
        var typed = visit("autumn", LocalDate.of(2026, 10, 14), 382_000);
        assertThat(OdometerDoubt.of(car(SPRING), typed))
                .map(OdometerDoubt::question)
                .hasValueSatisfying(question -> assertThat(question)
                        .isEqualTo(new SeasonSaid.OdometerToTypeAgain(
                                Amount.of(382_000, "km"),
                                Amount.of(344_000, "km"),
                                LocalDate.of(2026, 4, 15),
                                Amount.of(344_000 / 182.0, "km"))));
    }

    @Test
    void whatCarsRunAndWhatComesFirstIsNot() {
        assertThat(OdometerDoubt.of(car(SPRING), visit("autumn", LocalDate.of(2026, 10, 14), 45_000)))
                .isEmpty();
        assertThat(OdometerDoubt.of(car(), visit("first", SPRING.date(), 382_000)))
                .isEmpty();
        assertThat(OdometerDoubt.of(car(SPRING), SPRING)).isEmpty();
    }

    @Test
    void aVisitThatComesInLateIsHeldAgainstTheOneBeforeIt() {
        var autumn = visit("autumn", LocalDate.of(2026, 10, 14), 382_000);
        assertThat(OdometerDoubt.of(car(SPRING, autumn), visit("summer", LocalDate.of(2026, 7, 1), 41_000)))
                .isEmpty();
        assertThat(OdometerDoubt.of(car(SPRING, autumn), visit("summer", LocalDate.of(2026, 7, 1), 141_000)))
                .isPresent();
    }

    /** 344,000 km in a day would lift the average of all seasons beyond what the model takes. */
    @Test
    void anOdometerThatIsWrongSaysNothingOfHowFarTheCarRuns() {
        var nextDay = visit("wrong", SPRING.date().plusDays(1), 382_000);
        var later = visit("later", LocalDate.of(2026, 10, 14), 390_000);
        assertThat(OdometerDoubt.of(car(SPRING, nextDay), later)).isEmpty();
        var further = visit("later", LocalDate.of(2026, 10, 14), 490_000);
        assertThat(OdometerDoubt.of(car(SPRING, nextDay), further)).isPresent();
    }
}
