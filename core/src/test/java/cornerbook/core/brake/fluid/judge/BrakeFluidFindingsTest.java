package cornerbook.core.brake.fluid.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.fluid.judge.FluidSaid.NotJudged;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class BrakeFluidFindingsTest {
    private final List<Said> notJudged = new ArrayList<>();

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
        assertThat(below).map(Finding::source).contains(FluidSaid.Ground.FLUID);
        assertThat(below).map(Finding::lifeLeft).contains(0.0);
        assertThat(asNew).map(Finding::lifeLeft).contains(1.0);
        assertThat(notJudged).containsOnly(NotJudged.AGE_WITHOUT_LAST_CHANGE);
    }

    @Test
    void withoutAGradeNothingIsJudged() {
        assertThat(judge(null, 120)).isEmpty();
        assertThat(notJudged).contains(new FluidSaid.NoGrade(Amount.of(120, "°C")));
    }

    @Test
    void withoutAReadingNothingIsJudged() {
        assertThat(judge(Cars.vehicle(), List.of())).isEmpty();
        assertThat(notJudged).containsExactly(NotJudged.BOILING_POINT, NotJudged.AGE_WITHOUT_LAST_CHANGE);
    }

    /** Water by mass at which the wet boiling point is defined: 49 CFR 571.116 S5.1.2, 3.70 %. */
    @Test
    void fluidWithTheWaterOfTheWetTestIsSpent() {
        assertThat(judge(Cars.vehicle(), List.of(water(3.6))))
                .map(Finding::verdict)
                .contains(Verdict.HOLDS);
        assertThat(judge(Cars.vehicle(), List.of(water(3.7))))
                .map(Finding::verdict)
                .contains(Verdict.SPENT);
    }

    @Test
    void ageIsJudgedByTheManufacturersInterval() {
        assertThat(changed(Cars.AUTUMN.minusYears(2).minusDays(2)).verdict()).isEqualTo(Verdict.SPENT);
        var soon = changed(Cars.AUTUMN.minusYears(2).plusDays(90));
        assertThat(soon.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(soon.horizon()).isEqualTo(Cars.AUTUMN.plusDays(90));
        assertThat(changed(Cars.AUTUMN.minusDays(30)).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void fluidThatWasReplacedIsGoodWhateverItBoiledAt() {
        var replaced = Cars.reading(Measure.BRAKE_FLUID_REPLACED, null, null, null, 1);
        var boils = Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, 120);
        assertThat(judge(withInterval(Cars.AUTUMN.minusYears(9)), List.of(replaced, boils)))
                .map(Finding::verdict)
                .contains(Verdict.HOLDS);
    }

    private Finding changed(LocalDate day) {
        return judge(withInterval(day), List.of()).orElseThrow();
    }

    private static Vehicle withInterval(LocalDate changedOn) {
        var known = VehicleDetails.NOT_KNOWN;
        return Cars.vehicle()
                .withDetails(new VehicleDetails(
                        known.differences(),
                        known.use(),
                        known.body(),
                        new FluidChange(changedOn, 2.0),
                        known.pressureWarning(),
                        known.mounting()));
    }

    private static Reading water(double percent) {
        return Cars.reading(Measure.BRAKE_FLUID_WATER, null, null, null, percent);
    }

    private Optional<Finding> judge(@Nullable BrakeFluid grade, double boilsC) {
        var reading = Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, boilsC);
        return judge(Cars.vehicle(grade), List.of(reading));
    }

    private Optional<Finding> judge(Vehicle vehicle, List<Reading> readings) {
        return judge(vehicle, Cars.visit(readings));
    }

    private Optional<Finding> judge(Vehicle vehicle, Visit... visits) {
        var judged = BrakeFluidFindings.judge(
                Cases.of(vehicle, visits).until(Cars.AUTUMN.plusDays(180)).last());
        notJudged.addAll(judged.notJudged());
        return judged.findings().stream().findFirst();
    }

    /** An interval of two years ends on its day; what ends on the day of the next visit is changed there. */
    @ParameterizedTest
    @CsvSource({"0, SPENT", "1, RUNS_OUT", "179, RUNS_OUT", "180, HOLDS"})
    void theDayOnWhichTheIntervalEndsIsTheLast(int daysFromNow, Verdict verdict) {
        var finding = changed(Cars.AUTUMN.plusDays(daysFromNow).minusYears(2));
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(Optional.ofNullable(finding.horizon()))
                .isEqualTo(
                        verdict == Verdict.RUNS_OUT
                                ? Optional.of(Cars.AUTUMN.plusDays(daysFromNow))
                                : Optional.empty());
        assertThat(finding.lifeLeft()).isEqualTo(verdict == Verdict.SPENT ? 0 : 1);
        assertThat(finding.plainWords().equals(Listed.sentences(new FluidSaid.Good())))
                .isEqualTo(verdict == Verdict.HOLDS);
    }

    /** DOT 4 boils at 230 °C new and at 155 °C wet (49 CFR 571.116 S5.1.1 and S5.1.2): 192.5 °C is half way. */
    @Test
    void theMarkShowsHowFarTheFluidIsFromWet() {
        assertThat(judge(BrakeFluid.DOT_4, 192.5)).map(Finding::lifeLeft).contains(0.5);
        assertThat(judge(BrakeFluid.DOT_4, 192.5))
                .map(Finding::plainWords)
                .contains(Listed.sentences(new FluidSaid.Good()));
    }

    /** Boiling early and full of water is one fault, told once. */
    @Test
    void wetFluidIsToldOnce() {
        var both = judge(
                        Cars.vehicle(),
                        List.of(water(5), Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, 140)))
                .orElseThrow();
        assertThat(both.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(both.lifeLeft()).isZero();
        assertThat(both.plainWords()).isEqualTo(Listed.sentences(new FluidSaid.TooWet()));
    }

    /** Good fluid that is due does not talk wet fluid good. */
    @Test
    void wetFluidStaysSpentThoughItIsNotDueYet() {
        var boils = Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, 140);
        assertThat(judge(withInterval(Cars.AUTUMN.minusYears(2).plusDays(90)), List.of(boils)))
                .map(Finding::verdict)
                .contains(Verdict.SPENT);
    }

    /** A change at a visit is newer than the day that came with the car. */
    @Test
    void aChangeInTheBookOutranksTheDayFromTheCarsPapers() {
        assertThat(judge(withInterval(Cars.AUTUMN.minusYears(9)), changedBefore(100), Cars.visit(List.of())))
                .map(Finding::verdict)
                .contains(Verdict.HOLDS);
    }

    private static Visit changedBefore(int days) {
        return new Visit(
                "before",
                Cars.AUTUMN.minusDays(days),
                45_000,
                Cars.at("S-"),
                Cars.at("S-"),
                List.of(Cars.reading(Measure.BRAKE_FLUID_REPLACED, null, null, null, 1)));
    }

    @Test
    void anIntervalThatIsNotKnownIsSaid() {
        judge(Cars.vehicle(), changedBefore(100), Cars.visit(List.of()));
        assertThat(notJudged).containsExactly(NotJudged.BOILING_POINT, NotJudged.AGE_WITHOUT_INTERVAL);
    }

    /** The change dates it: no interval that any manufacturer sets ends on its first day. */
    @Test
    void theAgeOfFluidThatWasChangedTodayIsKnown() {
        assertThat(judge(Cars.vehicle(), List.of(Cars.reading(Measure.BRAKE_FLUID_REPLACED, null, null, null, 1))))
                .map(Finding::title)
                .contains(new FluidSaid.Title(Listed.commas(List.of(new FluidSaid.NewAtThisVisit()))));
        assertThat(notJudged).isEmpty();
    }

    /** An entry that it was not done is no change. */
    @Test
    void fluidThatWasNotChangedIsNotNew() {
        assertThat(judge(Cars.vehicle(), List.of(Cars.reading(Measure.BRAKE_FLUID_REPLACED, null, null, null, 0))))
                .isEmpty();
    }
}
