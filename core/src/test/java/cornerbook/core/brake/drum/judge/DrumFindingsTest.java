package cornerbook.core.brake.drum.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.assess.BrakeFindings;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.caliper.CaliperSaid;
import cornerbook.core.brake.drum.judge.DrumSaid.NotRead;
import cornerbook.core.brake.judge.BrakeReadingRules;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.BrakeSaid.Pair;
import cornerbook.core.brake.judge.GaugeError;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureName;
import cornerbook.core.car.Reading;
import cornerbook.core.car.ServiceSteps;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drums at the rear of an invented car. Numbers of a vehicle maker's manual for a small car: drum 180.0 mm, at most 181.0; lining 4.0 mm,
 * at least 1.0. The law of these tests asks 1.6 mm, as Québec does of bonded linings (C-24.2, r. 32, s. 135 (9) (a)).
 */
class DrumFindingsTest {
    private static final Vehicle CAR = Cars.withRearDrums(new DrumBrake(180, 181, 4, 1), BrakeDetails.NOT_KNOWN);

    /** "If the inside diameter of the brake drum is more than the maximum, replace the drum." (the same manual) */
    @ParameterizedTest
    @CsvSource({"181.3, SPENT", "181.0, SPENT", "180.2, HOLDS"})
    void theDrumIsHeldAgainstItsDiscardDiameter(double diameterMm, Verdict verdict) {
        assertThat(only(Part.DRUM, drum(diameterMm)).verdict()).isEqualTo(verdict);
    }

    @Test
    void beyondItsDiscardDiameterADrumIsReplacedWithTheOther() {
        assertThat(words(only(Part.DRUM, drum(181.3)))).containsExactly(new DrumSaid.BeyondDiscard(Corner.LR));
        assertThat(findings(drum(181.3)).findings())
                .filteredOn(finding -> finding.subject().part() == Part.BRAKE_PAIR)
                .singleElement()
                .satisfies(pair -> {
                    assertThat(pair.title()).isEqualTo(new BrakeSaid.ReplacePair(Axle.REAR, Pair.DRUMS));
                    assertThat(action(pair)).isEqualTo(Todo.Action.REPLACE_PAIR);
                });
    }

    /** Below the law Unsafe, as for pads. The maker's 1.0 mm is less than the law, so the law is the minimum. */
    @ParameterizedTest
    @CsvSource({"1.2, UNSAFE", "1.6, SPENT", "3.8, HOLDS"})
    void theLiningIsHeldAgainstTheLaw(double liningMm, Verdict verdict) {
        assertThat(only(Part.SHOE, corner(Measure.LINING_THICKNESS, liningMm)).verdict())
                .isEqualTo(verdict);
    }

    /**
     * Riveted lining is read over the rivet heads: 1 mm by Québec's law (C-24.2, r. 32, ss. 31 and 135), 1/32 in over the fastener by
     * 49 CFR 570.59(c). 1.2 mm is unsafe of bonded lining and is not of riveted.
     */
    @ParameterizedTest
    @CsvSource({"0.7, UNSAFE", "1.2, SPENT", "1.5, SPENT", "3.5, HOLDS"})
    void rivetedLiningIsHeldAgainstItsOwnLaw(double overRivetsMm, Verdict verdict) {
        var riveted = Cars.withRearDrums(new DrumBrake(180, 181, 4, 1.6), riveted(true));
        var judged = judged(riveted, corner(Measure.LINING_OVER_RIVETS, overRivetsMm));
        assertThat(judged.findings())
                .filteredOn(finding -> finding.subject().part() == Part.SHOE)
                .singleElement()
                .satisfies(shoes -> assertThat(shoes.verdict()).isEqualTo(verdict));
        assertThat(ReadingLimit.broken(
                                DrumFindings.limits(Cases.of(riveted, Cars.visit(List.of()))
                                                .last())
                                        .stream()
                                        .filter(limit -> limit.measure() == Measure.LINING_OVER_RIVETS)
                                        .toList(),
                                overRivetsMm)
                        .isPresent())
                .isEqualTo(verdict != Verdict.HOLDS);
    }

    /** Only one of the two is asked for, and bonded is what nobody calls riveted. */
    @Test
    void liningIsAskedForAsItIsFastened() {
        var riveted = Cars.withRearDrums(new DrumBrake(180, 181, 4, 1), riveted(true));
        assertThat(WorkStep.DRUM.measures(Measure.Carrier.CORNER, riveted, Axle.REAR))
                .contains(Measure.LINING_OVER_RIVETS)
                .doesNotContain(Measure.LINING_THICKNESS);
        assertThat(WorkStep.DRUM.measures(Measure.Carrier.CORNER, CAR, Axle.REAR))
                .contains(Measure.LINING_THICKNESS)
                .doesNotContain(Measure.LINING_OVER_RIVETS);
        var disc = Cars.vehicle().rear().brake().friction();
        assertThatThrownBy(() -> new BrakeSpecification(disc, false, riveted(false)))
                .isInstanceOf(Refused.class);
    }

    private static BrakeDetails riveted(boolean riveted) {
        return new BrakeDetails(null, null, null, null, null, null, riveted, null);
    }

    /** "A crack that extends to the outer edge of the friction surface or on another part of the drum" is major (s. 174). */
    @ParameterizedTest
    @CsvSource({"1, SPENT", "2, UNSAFE"})
    void aCrackedDrumIsReplaced(double cracks, Verdict verdict) {
        var found = only(Part.DRUM, drum(180.2), corner(Measure.DRUM_CRACKS, cracks));
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(words(found)).containsExactly(new DrumSaid.Cracked(cracks == 2));
        assertThat(action(found)).isEqualTo(Todo.Action.REPLACE_PAIR);
    }

    /** Contaminated by oil or grease: s. 31 (3). New shoes end it. */
    @Test
    void soakedLiningIsSpentHoweverThick() {
        var soaked = corner(Measure.LINING_SOAKED, 1);
        assertThat(only(Part.SHOE, corner(Measure.LINING_THICKNESS, 3.8), soaked)
                        .verdict())
                .isEqualTo(Verdict.SPENT);
        assertThat(only(Part.SHOE, soaked).title()).isEqualTo(new DrumSaid.SoakedTitle(Corner.LR));
        assertThat(only(Part.SHOE, soaked, corner(Measure.SHOES_REPLACED, 1)).verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /** A leak other than oozing is major (s. 174); "a slight amount of fluid is always present" (service manual). */
    @ParameterizedTest
    @CsvSource({
        "WHEEL_CYLINDER, 0, HOLDS",
        "WHEEL_CYLINDER, 1, RUNS_OUT",
        "WHEEL_CYLINDER, 2, UNSAFE",
        "SHOE_MOVEMENT, 2, SPENT",
        "ADJUSTER_MOVEMENT, 1, RUNS_OUT",
        "ADJUSTER_MOVEMENT, 2, SPENT",
        "PARKING_LEVER_MOVEMENT, 2, SPENT",
        "SHOE_SPRINGS, 2, SPENT"
    })
    void whatIsInTheDrumIsJudgedByItsWord(Measure measure, double place, Verdict verdict) {
        assertThat(only(Part.DRUM_GEAR, corner(measure, place)).verdict()).isEqualTo(verdict);
    }

    /** What was replaced or freed counts as it was left, and is told as it was found. */
    @Test
    void whatWasPutRightInTheDrumIsTold() {
        assertThat(only(Part.DRUM_GEAR, corner(Measure.WHEEL_CYLINDER, 2), corner(Measure.WHEEL_CYLINDER_REPLACED, 1))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        var freed = only(
                Part.DRUM_GEAR, corner(Measure.ADJUSTER_MOVEMENT, 2), corner(Measure.SHOE_MOVEMENT_AFTER_SERVICE, 0));
        assertThat(freed.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(freed.plainWords())
                .isEqualTo(new CaliperSaid.PutRight(
                        Corner.LR,
                        Listed.commas(List.of(new CaliperSaid.Mended(
                                new CaliperSaid.Looked(Measure.ADJUSTER_MOVEMENT),
                                new CaliperSaid.FoundAndLeft(2, 0))))));
    }

    /** What an axle has not is not asked for, and nobody misses it. */
    @Test
    void nothingOfADiscIsAskedOfADrum() {
        var asked = ServiceSteps.atCorner(CAR, Axle.REAR).stream()
                .flatMap(step -> step.measures().stream())
                .toList();
        assertThat(asked)
                .contains(Measure.DRUM_DIAMETER, Measure.LINING_THICKNESS, Measure.WHEEL_CYLINDER, Measure.DRUM_CLOSED)
                .contains(Measure.WHEEL_TURNING, Measure.DISC_TEMPERATURE)
                .doesNotContain(
                        Measure.DISC_THICKNESS,
                        Measure.SLIDE_PIN_MOVEMENT,
                        Measure.RETAINING_PIN_MOVEMENT,
                        Measure.PAD_THICKNESS,
                        Measure.PISTON_MOVEMENT,
                        Measure.CALIPER_CLOSED);
        assertThat(ServiceSteps.atCorner(CAR, Axle.FRONT))
                .noneMatch(step -> step.measures().contains(Measure.DRUM_DIAMETER));
        assertThat(ServiceSteps.atCorner(CAR, Axle.REAR)).noneMatch(step -> step.step() == WorkStep.DISC);
        assertThat(findings().notJudged())
                .contains(
                        new DrumSaid.NotJudged(Corner.LR, NotRead.LINING),
                        new DrumSaid.NotJudged(Corner.RR, NotRead.DRUM))
                .filteredOn(line ->
                        line.toString().contains("LR") || line.toString().contains("RR"))
                .allMatch(DrumSaid.NotJudged.class::isInstance);
    }

    /** A reading of a part that is not there is refused where it is entered; one in the book is not used, and that is said. */
    @Test
    void aReadingOfADiscCannotBeAtADrum() {
        var read = corner(Measure.DISC_THICKNESS, 9);
        assertThat(BrakeReadingRules.wrongCaliper(CAR, read))
                .contains(new BrakeSaid.NotThere(new MeasureName(Measure.DISC_THICKNESS), Corner.LR));
        assertThat(findings(read).notJudged())
                .contains(new BrakeSaid.NotUsedThere(Corner.LR, new MeasureName(Measure.DISC_THICKNESS)));
        var front = Cars.reading(Measure.DRUM_DIAMETER, Corner.LF, null, null, 180);
        assertThat(BrakeReadingRules.wrongCaliper(CAR, front)).isPresent();
    }

    /** A slip of the pen: 118.2 for 181.2, and lining thicker than new by more than a gauge may err. */
    @ParameterizedTest
    @CsvSource({
        "DRUM_DIAMETER, 118.2, true",
        "DRUM_DIAMETER, 179.8, false",
        "LINING_THICKNESS, 4.6, true",
        "LINING_THICKNESS, 4.4, false"
    })
    void whatCannotBeAtADrumIsRefused(Measure measure, double value, boolean refused) {
        var read = corner(measure, value);
        assertThat(BrakeReadingRules.problem(CAR, new StandingReadings(List.of(read)), read)
                        .isPresent())
                .isEqualTo(refused);
    }

    /** While the gauge is in the hand: beyond by more than the gauge can err, and by less. */
    @ParameterizedTest
    @CsvSource({"181.0, false, false", "181.05, true, true", "181.2, true, false"})
    void theDiameterIsToldAtOnce(double diameterMm, boolean told, boolean again) {
        var limits = DrumFindings.limits(Cases.of(CAR, Cars.visit(List.of())).last()).stream()
                .filter(limit -> limit.measure() == Measure.DRUM_DIAMETER
                        && limit.subject().corner() == Corner.LR)
                .toList();
        var broken = ReadingLimit.broken(limits, diameterMm);
        assertThat(broken.isPresent()).isEqualTo(told);
        assertThat(broken.map(ReadingLimit::sentence)
                        .filter(GaugeError.ReadAgain.class::isInstance)
                        .isPresent())
                .isEqualTo(again);
    }

    @Test
    void aDrumHasNoDiscNumbersAndWearsOutward() {
        assertThatThrownBy(() -> new BrakeSpecification(
                        new DrumBrake(180, 181, 4, 1), false, new BrakeDetails(null, null, 7.0, null, null)))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new DrumBrake(180, 179, 4, 1)).isInstanceOf(Refused.class);
    }

    /** Every drum axle of a whole look: pads and disc stay silent, and the wear since the visit before is followed. */
    @Test
    void theFrontOfTheCarIsJudgedAsBefore() {
        var judged = findings(
                Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 9),
                Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.OUTER, 9));
        assertThat(judged.findings())
                .filteredOn(finding -> finding.subject().part() == Part.PAD)
                .singleElement()
                .satisfies(pads -> assertThat(pads.verdict()).isEqualTo(Verdict.HOLDS));
    }

    private static Finding only(Part part, Reading... readings) {
        return findings(readings).findings().stream()
                .filter(finding -> finding.subject().part() == part)
                .reduce((one, other) -> {
                    throw new AssertionError("two findings of " + part);
                })
                .orElseThrow();
    }

    private static Judgement findings(Reading... readings) {
        return judged(CAR, readings);
    }

    private static Judgement judged(Vehicle car, Reading... readings) {
        return BrakeFindings.judge(Cases.of(car, Cars.visit(List.of(readings)))
                .until(Cars.AUTUMN.plusDays(180))
                .last());
    }

    private static Todo.Action action(Finding finding) {
        return Objects.requireNonNull(finding.todo()).action();
    }

    private static List<Said> words(Finding finding) {
        var said = new ArrayList<Said>();
        if (finding.plainWords() instanceof Listed listed) {
            said.addAll(listed.items());
        } else {
            said.add(finding.plainWords());
        }
        return said;
    }

    private static Reading drum(double diameterMm) {
        return corner(Measure.DRUM_DIAMETER, diameterMm);
    }

    private static Reading corner(Measure measure, double value) {
        return Cars.reading(measure, Corner.LR, null, null, value);
    }
}
