package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeFluid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BrakeFluidFindingsTest {
    private final List<String> notJudged = new ArrayList<>();

    /** The wet boiling points are those of 49 CFR 571.116 S5.1.2, read from the reference table. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/brake/fluid.csv", numLinesToSkip = 1)
    void fluidIsSpentBelowTheWetMinimumOfItsGrade(
            String label, double dryC, double wetC, double toleranceC, String source) {
        var grade = BrakeFluid.parse(label);
        var atLimit = judge(grade, wetC);
        var below = judge(grade, wetC - 1);
        var asNew = judge(grade, dryC + toleranceC);
        assertThat(atLimit).as(source).map(Finding::verdict).contains(Verdict.HOLDS);
        assertThat(below).map(Finding::verdict).contains(Verdict.SPENT);
        assertThat(below).map(Finding::source).get().asString().contains("49 CFR 571.116 S5.1.2");
        assertThat(below).map(Finding::lifeLeft).contains(0.0);
        assertThat(asNew).map(Finding::lifeLeft).contains(1.0);
        assertThat(notJudged).isEmpty();
    }

    @Test
    void withoutAGradeNothingIsJudged() {
        assertThat(judge(null, 120)).isEmpty();
        assertThat(notJudged)
                .containsExactly(
                        "brake fluid: boils at 120 °C, but the vehicle's specification names no grade to judge it by");
    }

    @Test
    void withoutAReadingNothingIsJudged() {
        assertThat(BrakeFluidFindings.of(Cars.vehicle(), readings(List.of()), notJudged))
                .isEmpty();
        assertThat(notJudged).containsExactly("brake fluid: boiling point not measured");
    }

    private Optional<Finding> judge(@Nullable BrakeFluid grade, double boilsC) {
        var reading = Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, boilsC);
        return BrakeFluidFindings.of(Cars.vehicle(grade), readings(List.of(reading)), notJudged);
    }

    private static CurrentReadings readings(List<Reading> readings) {
        return new CurrentReadings(
                Cars.changeOver(7, 7, List.of()).getVisit("v2").withReadings(readings));
    }
}
