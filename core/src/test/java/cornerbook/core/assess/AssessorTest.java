package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.battery.BatterySaid;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Problem;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Facts;
import cornerbook.core.torque.TorqueSaid;
import cornerbook.core.tread.TreadPattern;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadSaid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AssessorTest {
    private final Assessor assessor = new Assessor(Cars.LIMITS);

    @Test
    void aDeepWinterSetHoldsUntilTheSpringChangeOver() {
        var assessment = assessor.assess(Cars.changeOver(7.5, 7.5, List.of()), "v2");
        assertThat(assessment.nextVisit()).isEqualTo(LocalDate.of(2027, 4, 15));
        var winter = of(assessment, Part.WHEEL_SET, "WINTER-set");
        assertThat(winter.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(winter.probability()).isGreaterThan(0.9);
        assertThat(winter.evidence())
                .extracting(Evidence::what)
                .contains(TreadSaid.Label.LOWEST_GROOVE, TreadSaid.Label.WEAR_THERE, TreadSaid.Label.DISTANCE);
        assertThat(assessment.forecasts())
                .extracting(SetForecast::role)
                .containsExactly(SetSpan.Role.GOING_ON, SetSpan.Role.COMING_OFF);
    }

    /** Who comes in on winter wheels in March, and leaves on them, comes for the change-over in April of the same year. */
    @ParameterizedTest
    @CsvSource({"2026-03-12, 2026-04-15", "2026-04-14, 2026-04-15", "2026-04-15, 2027-04-15", "2026-11-05, 2027-04-15"})
    void wheelsThatStayOnComeOffAtTheComingChangeOver(LocalDate visit, LocalDate next) {
        var history = Cars.changeOver(7, 7.5, List.of());
        var stays = new Visit("v", visit, 49_000, Cars.at("W-"), Cars.at("W-"), List.of());
        assertThat(assessor.assess(
                                new CarHistory(history.vehicle(), history.customer(), history.sets(), List.of(stays)),
                                "v")
                        .nextVisit())
                .isEqualTo(next);
    }

    @Test
    void verdictsGetGraverAsTheTreadGetsLower() {
        assertThat(of(assess(7.0, 4.2), Part.WHEEL_SET, "WINTER-set").verdict())
                .as("read once, its wear was not seen yet")
                .isEqualTo(Verdict.RUNS_OUT);
        assertThat(of(assess(7.0, 3.5), Part.WHEEL_SET, "WINTER-set").verdict()).isEqualTo(Verdict.SPENT);
        assertThat(of(assess(7.0, 1.2), Part.WHEEL_SET, "WINTER-set").verdict()).isEqualTo(Verdict.UNSAFE);
        int before = -1;
        for (double depthMm = 7.5; depthMm > 1; depthMm -= 0.1) {
            int now = of(assess(7.0, depthMm), Part.WHEEL_SET, "WINTER-set")
                    .verdict()
                    .ordinal();
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
    }

    @Test
    void theSetComingOffIsJudgedOverItsNextSeason() {
        var assessment = assess(3.6, 7.5);
        var summer = of(assessment, Part.WHEEL_SET, "SUMMER-set");
        assertThat(summer.verdict()).as("read once").isEqualTo(Verdict.RUNS_OUT);
        assertThat(summer.plainWords()).isInstanceOf(TreadSaid.StoredMayNotLast.class);
        assertThat(assessment.forecasts().get(1).from()).isEqualTo(assessment.nextVisit());
        assertThat(assessment.forecasts().get(1).until()).isEqualTo(LocalDate.of(2027, 10, 20));
    }

    @Test
    void untilTheWheelsAreRecordedTheSeasonsSetIsTakenToGoOn() {
        var history = Cars.changeOver(5, 7.5, List.of());
        var arrived = history.visits().get(1).withLeftOn(Map.of());
        var assessment = assessor.assess(Cars.history(history.visits().getFirst(), arrived), "v2");
        assertThat(assessment.forecasts())
                .extracting(forecast -> forecast.role() + " " + forecast.set().id())
                .containsExactly("GOING_ON WINTER-set", "COMING_OFF SUMMER-set");
        assertThat(assessment.retorque()).isNull();
    }

    @Test
    void theDepthAtFittingIsHeldAgainstWhatIsRecommended() {
        assertThat(of(assess(7, 4.5), Part.WHEEL_SET, "WINTER-set").evidence())
                .extracting(Evidence::value)
                .contains(new TreadSaid.DepthAtFitting(new Amount(4.5, "mm", 1), new Amount(4.8, "mm", 1), true));
        var both = assess(4.5, 7);
        assertThat(of(both, Part.WHEEL_SET, "WINTER-set").evidence())
                .extracting(Evidence::value)
                .contains(new TreadSaid.DepthAtFitting(new Amount(7, "mm", 1), new Amount(4.8, "mm", 1), false));
        assertThat(of(both, Part.WHEEL_SET, "SUMMER-set").evidence())
                .extracting(Evidence::what)
                .doesNotContain(TreadSaid.Label.LOWEST_AT_FITTING);
    }

    @Test
    void theSetThatGoesOnHasToHoldUntilTheNextVisit() {
        var assessment = assess(7, 7.5);
        assertThat(assessment.nextVisit()).isEqualTo(LocalDate.of(2027, 4, 15));
        assertThat(assessment.forecasts().getFirst().until()).isEqualTo(assessment.nextVisit());
    }

    @Test
    void fittedWheelsOpenARetorque() {
        var retorque = Objects.requireNonNull(assess(7, 7).retorque());
        assertThat(retorque.dueOdometerKm()).isEqualTo(48_080);
        // 8000 km in 183 days is 43.7 km a day, pulled a little towards 40: 80 km takes two days.
        assertThat(retorque.dueDate()).isEqualTo(Cars.AUTUMN.plusDays(2));
    }

    @Test
    void aLooseWheelIsUnsafeAndAMissingTorqueIsSaid() {
        var loose = Cars.reading(Measure.WHEEL_TORQUE, Corner.LF, "W-LF", null, 90);
        var assessment = assessor.assess(Cars.changeOver(7, 7, List.of(loose)), "v2");
        assertThat(assessment.findings().getFirst().subject().part()).isEqualTo(Part.WHEEL_TORQUE);
        assertThat(assessment.findings().getFirst().verdict()).isEqualTo(Verdict.UNSAFE);
        assertThat(assessment.notJudged()).contains(new TorqueSaid.NotRecorded(Corner.RF, "W-RF"));
    }

    @Test
    void padsAreJudgedByTheThinnerAndByTheDifference() {
        assertThat(pads(8, 7.5).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Facts.of(pads(8, 5.5).plainWords())).contains("WornMore(OUTER)");
        assertThat(pads(2.5, 8).verdict()).isEqualTo(Verdict.SPENT);
        assertThat(pads(1.0, 8).verdict()).isEqualTo(Verdict.UNSAFE);
    }

    @Test
    void aVoltageHeldUpIsNotJudged() {
        var held = Cars.reading(Measure.BATTERY_VOLTAGE, null, null, null, 13.9);
        var assessment = assessor.assess(Cars.changeOver(7, 7, List.of(held)), "v2");
        assertThat(assessment.findings()).noneMatch(f -> f.subject().part() == Part.BATTERY);
        assertThat(assessment.notJudged()).hasAtLeastOneElementOfType(BatterySaid.HeldUpNow.class);
    }

    @Test
    void aCorrectionReplacesWhatItCorrects() {
        var wrong = Cars.reading(Measure.BATTERY_VOLTAGE, null, null, null, 11.2);
        var right = new Reading(
                "r-new",
                Measure.BATTERY_VOLTAGE,
                null,
                null,
                null,
                12.7,
                "12.7 V",
                wrong.id(),
                "meter on the wrong range");
        var assessment = assessor.assess(Cars.changeOver(7, 7, List.of(right, wrong)), "v2");
        assertThat(of(assessment, Part.BATTERY, null).title()).asString().contains("12.7");
    }

    @Test
    void oneShoulderLowIsNamed() {
        var history = Cars.changeOver(7, 7, List.of());
        var visit = history.visits().get(1);
        var readings = new ArrayList<>(visit.readings());
        readings.removeIf(r -> "S-LF".equals(r.wheelTag()) && r.spot() == Spot.INNER);
        readings.add(Cars.reading(Measure.TREAD_DEPTH, Corner.LF, "S-LF", Spot.INNER, 4.0));
        var worn = Cars.history(
                history.visits().getFirst(),
                new Visit("v2", Cars.AUTUMN, 48_000, visit.arrivedOn(), visit.leftOn(), readings));
        var pattern = of(assessor.assess(worn, "v2"), Part.TREAD_PATTERN, "SUMMER-set");
        assertThat(pattern.subject().wheelTag()).isEqualTo("S-LF");
        assertThat(pattern.plainWords()).isEqualTo(new TreadSaid.UnevenBy(TreadPattern.Cause.INNER_ALIGNMENT));
    }

    @Test
    void rulesNameWhereAndWhat() {
        var forward = Cars.changeOver(7, 9.5, List.of());
        assertThat(VisitRules.check(forward, Cars.AUTUMN))
                .allMatch(problem -> problem.message() instanceof AssessSaid.DeeperThanNew)
                .hasSize(12);
        assertThat(VisitRules.check(Cars.changeOver(7, 7, List.of()), Cars.AUTUMN.minusDays(1)))
                .singleElement()
                .satisfies(problem -> assertThat(problem.where()).isEqualTo("/visits/1/date"));
        var twice = Cars.at("S-");
        twice.put(Corner.RR, "S-LF");
        var misplaced = Cars.history(
                new Visit("v1", Cars.AUTUMN.minusDays(9), 500, twice, twice, List.of()),
                new Visit("v2", Cars.AUTUMN, 500, Cars.at("S-"), Cars.at("X-"), List.of()));
        assertThat(VisitRules.check(misplaced, Cars.AUTUMN))
                .extracting(Problem::message)
                .contains(
                        new AssessSaid.WheelAtTwoCorners("S-LF", Corner.LF, Corner.RR),
                        new AssessSaid.NoSuchWheel("X-LF"));
    }

    private Assessment assess(double summerMm, double winterMm) {
        return assessor.assess(Cars.changeOver(summerMm, winterMm, List.of()), "v2");
    }

    private Finding pads(double innerMm, double outerMm) {
        var readings = List.of(
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, innerMm),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, outerMm));
        return of(assessor.assess(Cars.changeOver(7, 7, readings), "v2"), Part.PAD, null);
    }

    private static Finding of(Assessment assessment, Part part, @Nullable String setId) {
        return assessment.findings().stream()
                .filter(f -> f.subject().part() == part
                        && (setId == null || setId.equals(f.subject().setId())))
                .findFirst()
                .orElseThrow();
    }

    /** What was read of the whole car is judged with the rest: parking brake, fluid, battery, and the hoist that it stood on. */
    @Test
    void everyPartThatWasReadIsJudged() {
        var readings = List.of(
                Cars.reading(Measure.PARKING_BRAKE_HOLDING, null, null, null, 0),
                Cars.reading(Measure.BRAKE_FLUID_WATER, null, null, null, 1),
                Cars.reading(Measure.BATTERY_VOLTAGE, null, null, null, 12.7),
                Cars.reading(Measure.PAD_MOVEMENT_AFTER_SERVICE, Corner.LF, null, null, 0));
        assertThat(assessor.assess(Cars.changeOver(7, 7, readings), "v2").findings())
                .extracting(finding -> finding.subject().part())
                .contains(Part.PARKING_BRAKE, Part.BRAKE_FLUID, Part.BATTERY, Part.PAD_SEIZING);
    }

    /** The gravest stands first, and of two as grave the one with less life left. */
    @Test
    void findingsStandInTheOrderOfTheirWeight() {
        var findings = assess(3.6, 1.2).findings();
        assertThat(findings.getFirst().verdict()).isEqualTo(Verdict.UNSAFE);
        for (int i = 1; i < findings.size(); i++) {
            var before = findings.get(i - 1);
            var here = findings.get(i);
            assertThat(here.verdict()).isLessThanOrEqualTo(before.verdict());
            if (here.verdict() == before.verdict()) {
                assertThat(here.lifeLeft()).isGreaterThanOrEqualTo(before.lifeLeft());
            }
        }
    }

    /** The set that comes off has a plan for the day on which it goes on again; a car that stays on its set stores none. */
    @Test
    void theStoredSetHasItsPlan() {
        assertThat(assessor.planStored(Cars.changeOver(7, 7.5, List.of()), "v2"))
                .hasValueSatisfying(plan -> assertThat(plan.request().wheels())
                        .extracting(wheel -> wheel.tag())
                        .containsExactlyInAnyOrder("S-LF", "S-RF", "S-LR", "S-RR"));
        var stays = new ArrayList<Reading>();
        for (var corner : Corner.values()) {
            for (var spot : Spot.values()) {
                stays.add(Cars.reading(Measure.TREAD_DEPTH, corner, "S-" + corner, spot, 7));
            }
        }
        assertThat(assessor.planStored(Cars.history(Cars.visit(stays)), "v")).isEmpty();
        assertThat(assessor.assess(Cars.history(Cars.visit(stays)), "v").forecasts())
                .extracting(SetForecast::role)
                .containsExactly(SetSpan.Role.GOING_ON);
    }

    /** A set that nobody has measured is named, and one read below what the law asks is held against it where the season asks less. */
    @Test
    void aSetThatWasNeverMeasuredIsNamed() {
        var bare = Cars.history(Cars.visit(List.of()));
        assertThat(assessor.assess(bare, "v").notJudged())
                .contains(new TreadSaid.NeverMeasured(new SetOf(SeasonKind.SUMMER)));
    }
}
