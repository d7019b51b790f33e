package cornerbook.core.brake.drum.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.assess.BrakeFindings;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.caliper.CaliperSaid;
import cornerbook.core.brake.drum.judge.DrumSaid.NotRead;
import cornerbook.core.brake.judge.BrakeReadingRules;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.ServiceSteps;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Refused;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Shoes of a parking brake inside the rear discs of an invented car. Service manuals of several vehicle makers: lining 2.4 to 4.0 mm new,
 * 1.0 mm at least, always both sides ("never replace only one side"), no measure of the pedal's brake.
 */
class ParkingShoeFindingsTest {
    private static final Vehicle CAR = Cars.withRearParkingShoes(null);

    @ParameterizedTest
    @CsvSource({"0.8, SPENT", "1.0, HOLDS", "2.8, HOLDS"})
    void theUsualMinimumHoldsWhereTheMakersIsNotKnown(double liningMm, Verdict verdict) {
        var found = only(CAR, Part.SHOE, corner(Measure.LINING_THICKNESS, liningMm));
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.source()).isEqualTo(DrumSaid.Ground.USUAL_PARKING_LINING);
        assertThat(broken(CAR, liningMm)).isEqualTo(verdict != Verdict.HOLDS);
    }

    @Test
    void theMakersMinimumOutranksTheUsualOne() {
        var found = only(Cars.withRearParkingShoes(1.5), Part.SHOE, corner(Measure.LINING_THICKNESS, 1.2));
        assertThat(found.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(Objects.requireNonNull(found.todo()).action()).isEqualTo(Todo.Action.REPLACE_PAIR);
    }

    /** It does not brake the moving car: below its minimum it is replaced, and no law for pads makes it unsafe. */
    @Test
    void wornParkingShoesAreNeverUnsafe() {
        assertThat(only(CAR, Part.SHOE, corner(Measure.LINING_THICKNESS, 0.1)).verdict())
                .isEqualTo(Verdict.SPENT);
    }

    @Test
    void soakedShoesAreReplacedAndNewOnesEndIt() {
        var soaked = corner(Measure.LINING_SOAKED, 1);
        assertThat(only(CAR, Part.SHOE, soaked).title()).isEqualTo(new DrumSaid.SoakedParkingShoesTitle(Corner.LR));
        assertThat(only(CAR, Part.SHOE, soaked).verdict()).isEqualTo(Verdict.SPENT);
        assertThat(only(CAR, Part.SHOE, soaked, corner(Measure.SHOES_REPLACED, 1))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /** A seized adjuster in the disc is the parking brake's, not the caliper's. */
    @Test
    void whatSticksInTheDiscIsNoFaultOfTheCaliper() {
        var judged = judged(CAR, corner(Measure.ADJUSTER_MOVEMENT, 2), corner(Measure.PISTON_MOVEMENT, 0));
        assertThat(judged.findings())
                .filteredOn(finding -> finding.subject().part() == Part.CALIPER)
                .singleElement()
                .satisfies(caliper -> assertThat(caliper.verdict()).isEqualTo(Verdict.HOLDS));
        var gear = only(CAR, Part.DRUM_GEAR, corner(Measure.ADJUSTER_MOVEMENT, 2));
        assertThat(gear.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(gear.title())
                .isInstanceOfSatisfying(
                        CaliperSaid.FaultsTitle.class,
                        title -> assertThat(title.gear()).isEqualTo(CaliperSaid.Gear.PARKING_SHOES));
    }

    @Test
    void onlyACarThatHasThemIsAsked() {
        assertThat(asked(CAR, Axle.REAR))
                .contains(
                        Measure.LINING_THICKNESS,
                        Measure.ADJUSTER_MOVEMENT,
                        Measure.SHOES_REPLACED,
                        Measure.DRUM_CLOSED,
                        Measure.PAD_THICKNESS,
                        Measure.CALIPER_CLOSED)
                .doesNotContain(Measure.DRUM_DIAMETER, Measure.WHEEL_CYLINDER, Measure.LINING_OVER_RIVETS);
        assertThat(asked(CAR, Axle.FRONT)).doesNotContain(Measure.LINING_THICKNESS);
        var motorOnCaliper =
                Cars.withBrake(new BrakeDetails(BrakeDetails.ParkingBrake.MOTOR_ON_CALIPER, null, null, null, null));
        assertThat(asked(motorOnCaliper, Axle.REAR))
                .doesNotContain(Measure.LINING_THICKNESS, Measure.SHOES_REPLACED, Measure.DRUM_CLOSED);
        assertThat(BrakeReadingRules.wrongCaliper(motorOnCaliper, corner(Measure.LINING_THICKNESS, 2)))
                .isPresent();
    }

    /** Few visits take the disc off: they are asked for where it is off, and not with what every visit reads. */
    @Test
    void theyAreAskedForWhereTheDiscIsOff() {
        assertThat(WorkStep.HUB_AND_DISC_APART.measures(Measure.Carrier.CORNER, CAR, Axle.REAR))
                .contains(Measure.LINING_THICKNESS, Measure.SHOE_SPRINGS);
        assertThat(WorkStep.DRUM.measures(Measure.Carrier.CORNER, CAR, Axle.REAR))
                .containsExactly(Measure.PARKING_LEVER_MOVEMENT);
    }

    /** The disc was off, so that they were to be seen. */
    @Test
    void theyAreMissedWhenTheDiscWasOff() {
        assertThat(judged(CAR, corner(Measure.DISC_REPLACED, 1)).notJudged())
                .contains(new DrumSaid.NotJudged(Corner.LR, NotRead.PARKING_LINING));
        assertThat(judged(CAR).notJudged()).noneMatch(DrumSaid.NotJudged.class::isInstance);
    }

    @Test
    void aMinimumOfShoesThatAreNotThereIsRefused() {
        var disc = Cars.withBrake(Caliper.SLIDING, false).rear().brake().friction();
        var details = new BrakeDetails(BrakeDetails.ParkingBrake.CABLE, null, null, null, null, null, null, 1.5);
        assertThatThrownBy(() -> new BrakeSpecification(disc, false, details)).isInstanceOf(Refused.class);
    }

    private static boolean broken(Vehicle car, double liningMm) {
        var limits = ParkingShoeFindings.limits(
                        Cases.of(car, Cars.visit(List.of())).last())
                .stream()
                .filter(limit -> limit.subject().corner() == Corner.LR)
                .toList();
        return ReadingLimit.broken(limits, liningMm).isPresent();
    }

    private static List<Measure> asked(Vehicle car, Axle axle) {
        return ServiceSteps.atCorner(car, axle).stream()
                .flatMap(step -> step.measures().stream())
                .toList();
    }

    private static Finding only(Vehicle car, Part part, Reading... readings) {
        var found = judged(car, readings).findings().stream()
                .filter(finding -> finding.subject().part() == part)
                .toList();
        assertThat(found).hasSize(1);
        return found.getFirst();
    }

    private static Judgement judged(Vehicle car, Reading... readings) {
        return BrakeFindings.judge(Cases.of(car, Cars.visit(List.of(readings)))
                .until(Cars.AUTUMN.plusDays(180))
                .last());
    }

    private static Reading corner(Measure measure, double value) {
        return Cars.reading(measure, Corner.LR, null, null, value);
    }
}
