package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.caliper.CaliperSaid;
import cornerbook.core.brake.pads.BrakeCause;
import cornerbook.core.brake.pads.judge.PadSaid;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.ServiceSteps;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a hand finds at a caliper is a fact: it is said, all of it, and nothing is inferred of what it has settled; and it is told as it
 * was found and as it was left. A cause that the hand has just disproved must never be said. Common practice, no source.
 */
class FoundByHandTest {
    private static final Vehicle CAR = Cars.vehicle();

    /** Seen before: a piston that does not go back was told as "a pad stuck in its bracket", the piston at under 5 %. */
    @Test
    void aSeizedPistonIsSaidAndNoPadStuckInItsBracket() {
        var pads = pads(CAR, thickness(Spot.INNER, 9), thickness(Spot.OUTER, 6), read(Measure.PISTON_MOVEMENT, 2));
        assertThat(pads).contains(found(BrakeCause.PISTON_SEIZED));
        assertThat(inferred(pads)).doesNotContain(BrakeCause.PAD_STUCK_IN_BRACKET, BrakeCause.PISTON_SEIZED);
    }

    /** Every cause that was recorded at one corner, in the order in which they are looked at. */
    @Test
    void severalCausesAtOnceAreAllSaid() {
        var pads = pads(
                CAR,
                thickness(Spot.INNER, 4),
                thickness(Spot.OUTER, 7),
                read(Measure.SLIDE_PIN_MOVEMENT, 2),
                read(Measure.PISTON_MOVEMENT, 2),
                Cars.reading(Measure.PAD_MOVEMENT, Corner.LF, null, Spot.INNER, 2),
                read(Measure.HOSE_HOLDS_PRESSURE, 1));
        assertThat(pads)
                .contains(found(
                        BrakeCause.SLIDE_PINS_SEIZED,
                        BrakeCause.PISTON_SEIZED,
                        BrakeCause.PAD_STUCK_IN_BRACKET,
                        BrakeCause.HOSE_RESTRICTED));
        assertThat(inferred(pads)).isEmpty();
    }

    /** Outer pad thinner speaks for the pins (service literature), but not once they were found free; pads and piston free as well. */
    @Test
    void whatTheHandDisprovedIsNotInferred() {
        var worn = List.of(thickness(Spot.INNER, 9), thickness(Spot.OUTER, 5));
        assertThat(inferred(pads(CAR, worn.toArray(Reading[]::new)))).contains(BrakeCause.SLIDE_PINS_SEIZED);
        var looked = new ArrayList<>(worn);
        looked.add(read(Measure.SLIDE_PIN_MOVEMENT, 0));
        looked.add(Cars.reading(Measure.PAD_MOVEMENT, Corner.LF, null, Spot.INNER, 0));
        looked.add(Cars.reading(Measure.PAD_MOVEMENT, Corner.LF, null, Spot.OUTER, 0));
        looked.add(read(Measure.PISTON_MOVEMENT, 0));
        assertThat(inferred(pads(CAR, looked.toArray(Reading[]::new))))
                .doesNotContain(
                        BrakeCause.SLIDE_PINS_SEIZED, BrakeCause.PAD_STUCK_IN_BRACKET, BrakeCause.PISTON_SEIZED);
    }

    /** One free pad of two says nothing of the other. */
    @Test
    void oneFreePadDoesNotDisproveTheOther() {
        var pads = pads(
                CAR,
                thickness(Spot.INNER, 5),
                thickness(Spot.OUTER, 9),
                Cars.reading(Measure.PAD_MOVEMENT, Corner.LF, null, Spot.OUTER, 0),
                read(Measure.SLIDE_PIN_MOVEMENT, 0),
                read(Measure.PISTON_RETURN, 0.01));
        assertThat(inferred(pads)).containsExactly(BrakeCause.PISTON_SEIZED);
    }

    /** Drag that stops when the bleeder is opened is the hose's (trade literature on brake drag); a new hose ends it. */
    @Test
    void aHoseThatHoldsPressureIsPutRightNow() {
        var found = caliper(CAR, read(Measure.HOSE_HOLDS_PRESSURE, 1));
        assertThat(found.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(found.title())
                .isEqualTo(new CaliperSaid.FaultsTitle(
                        Corner.LF, Listed.commas(List.of(new CaliperSaid.Fault(Measure.HOSE_HOLDS_PRESSURE, 1)))));
        assertThat(caliper(CAR, read(Measure.HOSE_HOLDS_PRESSURE, 1), read(Measure.BRAKE_HOSE_REPLACED, 1))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /** One tap answers a sound corner by eye; a wheel that nobody turned and a bleeder that nobody opened stay unanswered. */
    @Test
    void whatNeedsAHandIsNotAnsweredByOneTap() {
        assertThat(List.of(Measure.WHEEL_TURNING, Measure.HOSE_HOLDS_PRESSURE))
                .noneMatch(measure -> Objects.requireNonNull(measure.scale()).beginsSound());
    }

    /** A fixed caliper of four pistons is asked for four answers, and the one that is seized is named. */
    @Test
    void severalPistonsAreToldOneByOne() {
        var car = Cars.withBrake(new BrakeDetails(null, null, null, null, null, 4));
        var asked = ServiceSteps.atCorner(car, Axle.FRONT).stream()
                .flatMap(step -> step.measures().stream())
                .toList();
        assertThat(asked)
                .contains(Measure.PISTON_MOVEMENT, Measure.PISTON_2_MOVEMENT, Measure.PISTON_4_MOVEMENT)
                .doesNotContain(Measure.PISTON_5_MOVEMENT);
        assertThat(ServiceSteps.atCorner(CAR, Axle.FRONT))
                .noneMatch(step -> step.measures().contains(Measure.PISTON_2_MOVEMENT));
        var found = caliper(
                car,
                read(Measure.PISTON_MOVEMENT, 0),
                read(Measure.PISTON_2_MOVEMENT, 0),
                read(Measure.PISTON_3_MOVEMENT, 2),
                read(Measure.PISTON_4_MOVEMENT, 1));
        assertThat(found.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(found.title())
                .isEqualTo(new CaliperSaid.FaultsTitle(
                        Corner.LF,
                        Listed.commas(List.of(
                                new CaliperSaid.Fault(Measure.PISTON_3_MOVEMENT, 2, 3),
                                new CaliperSaid.Fault(Measure.PISTON_4_MOVEMENT, 1, 4)))));
    }

    /** Three of four free pistons do not disprove the fourth. */
    @Test
    void onlyAllPistonsDisproveASeizedOne() {
        var car = Cars.withBrake(new BrakeDetails(null, null, null, null, null, 2));
        var worn = new Reading[] {
            thickness(Spot.INNER, 5), thickness(Spot.OUTER, 9), read(Measure.SLIDE_PIN_MOVEMENT, 0),
            read(Measure.PISTON_RETURN, 0.01), read(Measure.PISTON_MOVEMENT, 0), read(Measure.PISTON_2_MOVEMENT, 0)
        };
        assertThat(inferred(pads(car, Arrays.copyOf(worn, 5)))).contains(BrakeCause.PISTON_SEIZED);
        assertThat(inferred(pads(car, worn))).doesNotContain(BrakeCause.PISTON_SEIZED);
    }

    /** Seen before: pads that were still seized after cleaning gave no finding at all. */
    @ParameterizedTest
    @CsvSource({"0, 2, SPENT", "0, 1, RUNS_OUT", "1, 2, SPENT"})
    void padsThatCleaningLeftStuckAreFound(double before, double after, Verdict verdict) {
        var readings = new ArrayList<Reading>();
        readings.add(read(Measure.PAD_MOVEMENT_AFTER_SERVICE, after));
        readings.add(Cars.reading(Measure.PAD_MOVEMENT, Corner.LF, null, Spot.INNER, before));
        assertThat(findings(CAR, readings))
                .filteredOn(finding -> finding.title() instanceof CaliperSaid.LeftStuckTitle)
                .singleElement()
                .satisfies(left -> {
                    assertThat(left.verdict()).isEqualTo(verdict);
                    assertThat(left.plainWords()).isEqualTo(new CaliperSaid.LeftStuck(Corner.LF, after == 2));
                });
        assertThat(findings(CAR, readings.subList(0, 1)))
                .anyMatch(finding -> finding.title() instanceof CaliperSaid.LeftStuckTitle);
    }

    /** Pins found seized and left free: in order, told as both, and to be looked at again. Left tight, they need care. */
    @ParameterizedTest
    @CsvSource({"SLIDE_PIN_MOVEMENT, PIN_MOVEMENT_AFTER_SERVICE", "PISTON_MOVEMENT, PISTON_MOVEMENT_AFTER_SERVICE"})
    void whatWasFreedIsToldAsFoundAndAsLeft(Measure part, Measure after) {
        var freed = caliper(CAR, read(part, 2), read(after, 0));
        assertThat(freed.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(freed.plainWords())
                .isEqualTo(new CaliperSaid.PutRight(
                        Corner.LF,
                        Listed.commas(List.of(new CaliperSaid.Mended(
                                new CaliperSaid.Looked(part), new CaliperSaid.FoundAndLeft(2, 0))))));
        assertThat(freed.todo()).isEqualTo(new Todo(Todo.Action.INSPECT, Todo.When.AT_NEXT_VISIT));
        assertThat(caliper(CAR, read(part, 2), read(after, 1)).verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(caliper(CAR, read(part, 2), read(after, 2)).verdict()).isEqualTo(Verdict.SPENT);
        assertThat(caliper(CAR, read(part, 0), read(after, 2)).verdict())
                .as("worse than it was found")
                .isEqualTo(Verdict.SPENT);
        assertThat(caliper(CAR, read(after, 2)).verdict())
                .as("nobody recorded how it was found")
                .isEqualTo(Verdict.SPENT);
    }

    /** Pins come free by cleaning and grease; a piston or a boot does not. Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "SLIDE_PIN_MOVEMENT, 1, SERVICE_BRAKE",
        "SLIDE_PIN_MOVEMENT, 2, SERVICE_BRAKE",
        "PISTON_MOVEMENT, 1, REPAIR",
        "PISTON_MOVEMENT, 2, REPAIR",
        "PISTON_RETURN, 0, REPAIR",
        "BRAKE_BOOTS, 1, REPAIR",
        "BRAKE_HARDWARE, 1, REPAIR"
    })
    void onlyWhatComesFreeByCleaningIsCleaned(Measure measure, double value, Todo.Action action) {
        assertThat(Objects.requireNonNull(caliper(CAR, read(measure, value)).todo())
                        .action())
                .isEqualTo(action);
        assertThat(Objects.requireNonNull(caliper(CAR, read(measure, value), read(Measure.PISTON_MOVEMENT, 1))
                                .todo())
                        .action())
                .as("with a tight piston")
                .isEqualTo(Todo.Action.REPAIR);
    }

    /** Seen before: pads worn by a piston that moves with force only were to be freed, cleaned and lubricated. */
    @ParameterizedTest
    @CsvSource({"5, 9, PISTON_MOVEMENT, REPAIR", "9, 5, SLIDE_PIN_MOVEMENT, SERVICE_BRAKE"})
    void padsThatWearUnevenlyAskForWhatTheirLikeliestCauseDoes(
            double innerMm, double outerMm, Measure tight, Todo.Action action) {
        var pads =
                findings(CAR, List.of(thickness(Spot.INNER, innerMm), thickness(Spot.OUTER, outerMm), read(tight, 1)))
                        .stream()
                        .filter(finding -> finding.title() instanceof PadSaid.ReadTitle)
                        .findFirst()
                        .orElseThrow();
        assertThat(pads.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(Objects.requireNonNull(pads.todo()).action()).isEqualTo(action);
    }

    private static PadSaid.CausesFound found(BrakeCause... causes) {
        return new PadSaid.CausesFound(Listed.and(List.of(causes)), causes.length);
    }

    private static List<Said> pads(Vehicle car, Reading... readings) {
        return findings(car, List.of(readings)).stream()
                .filter(finding -> finding.title() instanceof PadSaid.ReadTitle)
                .findFirst()
                .map(finding -> ((Listed) finding.plainWords()).items())
                .orElseThrow();
    }

    private static List<BrakeCause> inferred(List<Said> words) {
        return words.stream()
                .flatMap(word -> (word instanceof PadSaid.LookFirst first
                                ? Optional.of(first.cause())
                                : word instanceof PadSaid.LookAlso also
                                        ? Optional.of(also.cause())
                                        : Optional.<BrakeCause>empty())
                        .stream())
                .toList();
    }

    private static Finding caliper(Vehicle car, Reading... readings) {
        return findings(car, List.of(readings)).stream()
                .filter(finding -> finding.subject().part() == Part.CALIPER)
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding> findings(Vehicle car, List<Reading> readings) {
        return BrakeFindings.judge(Cases.of(car, Cars.visit(readings))
                        .until(Cars.AUTUMN.plusDays(180))
                        .last())
                .findings();
    }

    private static Reading thickness(Spot side, double mm) {
        return Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, side, mm);
    }

    private static Reading read(Measure measure, double value) {
        return Cars.reading(measure, Corner.LF, null, null, value);
    }
}
