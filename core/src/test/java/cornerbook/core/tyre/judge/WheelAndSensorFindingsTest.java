package cornerbook.core.tyre.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.air.AirSaid;
import cornerbook.core.air.PressureWarning;
import cornerbook.core.air.judge.PressureSaid;
import cornerbook.core.air.judge.SensorFindings;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.lift.CarBody;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Wheels against the hub, and the batteries of their sensors. All data are invented. */
class WheelAndSensorFindingsTest {
    private static final Mounting HUB = Mounting.parse("5x114.3 M14x1.5 cone 64.1 ET45 7.5J");

    private static CarHistory car(String wheel, @Nullable LocalDate batteryOn) {
        var set = Cars.set(SeasonKind.SUMMER, "S-");
        var known = set.wheels().stream()
                .map(each -> new Wheel(
                        each.tag(),
                        each.tyre(),
                        "1A2B3C4D",
                        new WheelDetails(Mounting.parse(wheel), "433 MHz", batteryOn)))
                .toList();
        var history = Cars.history(Cars.visit(List.of()));
        var details = new VehicleDetails(
                DifferenceLimits.NOT_KNOWN,
                CarUse.USUAL,
                CarBody.NOT_KNOWN,
                FluidChange.NOT_KNOWN,
                new PressureWarning(PressureWarning.Kind.DIRECT, PressureWarning.Learning.BY_TOOL),
                HUB);
        return new CarHistory(
                history.vehicle().withDetails(details),
                history.customer(),
                List.of(new WheelSet(set.id(), set.season(), null, known)),
                history.visits());
    }

    private static List<Finding> fit(String wheel) {
        var car = car(wheel, null);
        return WheelFitFindings.judge(Cases.of(car).last()).findings();
    }

    @Test
    void aWheelOfAnotherBoltCircleIsUnsafeAndOneOfAnotherSeatIsSpent() {
        assertThat(fit("5x114.3 M14x1.5 cone 66.6 ET40 7.5J")).isEmpty();
        assertThat(fit("5x112 M14x1.5 cone 66.6 ET40 7.5J"))
                .hasSize(4)
                .allMatch(finding -> finding.verdict() == Verdict.UNSAFE);
        assertThat(fit("5x114.3 M14x1.5 ball 64.1 ET45 7.5J"))
                .hasSize(4)
                .allMatch(finding -> finding.verdict() == Verdict.SPENT);
    }

    @Test
    void anOldSensorBatteryRunsOutTenYearsAfterItsBirth() {
        var findings = sensors(LocalDate.of(2019, 1, 1));
        assertThat(findings).hasSize(4).allMatch(finding -> finding.verdict() == Verdict.RUNS_OUT);
        assertThat(findings.getFirst().horizon())
                .isEqualTo(LocalDate.of(2019, 1, 1).plusDays(3653));
        assertThat(findings.getFirst().subject().corner()).isEqualTo(Corner.LF);
    }

    @Test
    void otherWheelsHaveToBeLearned() {
        var car = car("5x114.3 M14x1.5 cone 64.1 ET45 7.5J", null);
        var changed = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("W-"), Cars.at("S-"), List.of());
        assertThat(notJudged(car, changed)).containsExactly(new PressureSaid.HasToLearn(AirSaid.ToLearn.BY_TOOL));
    }

    /** A sensor's battery is old from seven years and ends at ten: common practice, no source. */
    @Test
    void aYoungSensorBatteryHolds() {
        var findings = sensors(Cars.AUTUMN);
        assertThat(findings).hasSize(4).allMatch(finding -> finding.verdict() == Verdict.HOLDS);
        assertThat(findings.getFirst().lifeLeft()).isEqualTo(1);
        assertThat(findings.getFirst().horizon()).isNull();
        // 1826 days are five of ten years.
        assertThat(sensors(Cars.AUTUMN.minusDays(1826)).getFirst().lifeLeft()).isCloseTo(0.5, within(0.001));
    }

    /** A battery from after this visit was not in the wheel then. */
    @Test
    void aLaterBatterySaysNothingOfThisVisit() {
        assertThat(sensors(Cars.AUTUMN.plusDays(1))).isEmpty();
        assertThat(sensors(null)).isEmpty();
    }

    @Test
    void wheelsThatStayedNeedNoLearning() {
        var car = car("5x114.3 M14x1.5 cone 64.1 ET45 7.5J", null);
        assertThat(notJudged(car, car.visits().getLast()))
                .as("the same wheels are on")
                .isEmpty();
        var arrived = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Map.of(), List.of());
        assertThat(notJudged(car, arrived))
                .as("not known yet what it leaves on")
                .isEmpty();
    }

    @Test
    void aWheelOfWhichNothingIsKnownIsNotJudged() {
        var unknown = Cars.history(Cars.visit(List.of()));
        assertThat(WheelFitFindings.judge(Cases.of(unknown).last()).findings()).isEmpty();
        var car = car("5x112 M14x1.5 cone 66.6 ET40 7.5J", null);
        var onOne = with(car, car.visits().getLast().withLeftOn(Map.of(Corner.LR, "S-LR")));
        assertThat(WheelFitFindings.judge(Cases.of(onOne).last()).findings())
                .extracting(Finding::subject)
                .containsExactly(new Subject(Subject.Part.WHEEL_FIT, Corner.LR, "S-LR", null));
    }

    private static List<Finding> sensors(@Nullable LocalDate batteryOn) {
        var car = car("5x114.3 M14x1.5 cone 64.1 ET45 7.5J", batteryOn);
        return SensorFindings.judge(Cases.of(car).last()).findings();
    }

    private static List<Said> notJudged(CarHistory car, Visit visit) {
        return SensorFindings.judge(Cases.of(with(car, visit)).last()).notJudged();
    }

    private static CarHistory with(CarHistory car, Visit visit) {
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), List.of(visit));
    }
}
