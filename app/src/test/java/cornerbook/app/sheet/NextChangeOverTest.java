package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.season.Climate;
import cornerbook.core.season.Climate.MonthNormal;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** The line that car page and hand-over sheet have of the next change-over. */
class NextChangeOverTest {
    private static final Climate INVENTED = new Climate(
            "Invented Valley",
            "invented normals",
            -28,
            DoubleStream.of(-10, -8, -2, 5, 13, 18, 21, 20, 15, 8, 2, -6)
                    .mapToObj(mean -> new MonthNormal(mean - 5, mean + 5))
                    .toList());

    private final CarHistory car = DemoShop.histories(LocalDate.of(2026, 11, 25)).stream()
            .filter(history -> history.vehicle().id().equals("demo-08"))
            .findFirst()
            .orElseThrow();
    private final String visit = car.visits().getLast().id();
    private final Assessor assessor = new Assessor(LimitsFile.load());

    /**
     * On winter wheels in November: spring is next. April has 5 °C and May 13 °C, which a straight line from middle to middle passes
     * at 7 °C on 22 April; from there a cold day is no longer likelier than not (common practice, no source).
     */
    @Test
    void winterWheelsComeOffInTheSpringOfThePlace() {
        var assessment = assessor.in(INVENTED).assess(car, visit);
        var next = Objects.requireNonNull(assessment.changeOver());
        assertThat(assessment.nextVisit())
                .as("one answer: the next visit lies within the days that are named")
                .isBetween(next.from(), next.until());
        assertThat(next.from()).isBetween(LocalDate.of(2027, 4, 19), LocalDate.of(2027, 4, 25));
        assertThat(next.until()).isBetween(LocalDate.of(2027, 5, 8), LocalDate.of(2027, 5, 20));
        assertThat(Reader.DEFAULT.say(next)).startsWith("between ").endsWith("(climate of Invented Valley)");
    }

    @Test
    void nothingIsSaidWhereTheClimateIsNotKnown() {
        var assessment = assessor.assess(car, visit);
        assertThat(assessment.changeOver()).isNull();
        assertThat(assessment.nextVisit()).as("the usual day").isEqualTo(LocalDate.of(2027, 4, 15));
    }
}
