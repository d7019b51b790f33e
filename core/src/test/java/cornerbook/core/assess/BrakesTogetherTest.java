package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.disc.judge.DiscSaid;
import cornerbook.core.brake.judge.BrakePairFindings.AtFault;
import cornerbook.core.brake.judge.BrakePairFindings.OneIsHotter;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.GaugeError;
import cornerbook.core.brake.pads.judge.PadSaid;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drag, cracks and fluid together; drag told from seizing; readings that the gauge cannot tell from their limit. The car: disc at least
 * 26 mm, pads at least 3 mm, law 1.6 mm, DOT 4 (wet boiling point 155 °C, 49 CFR 571.116). What is gravest together is common practice,
 * no source: a brake that drags is a heater.
 */
class BrakesTogetherTest {
    private static final Reading CRACK = read(Measure.DISC_CRACKS, 1);
    private static final Reading THICK = read(Measure.DISC_THICKNESS, 27.8);
    private static final Reading DRAG = read(Measure.WHEEL_TURNING, 1);
    private static final Reading BOILS = Cars.reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, 140);

    /** Seen before: each alone was to be put right, and nothing said that together they are unsafe. */
    @Test
    void cracksDragAndBoilingFluidTogetherAreUnsafeInOneSentence() {
        var together = together(CRACK, THICK, DRAG, BOILS);
        assertThat(together).singleElement().satisfies(found -> {
            assertThat(found.verdict()).isEqualTo(Verdict.UNSAFE);
            assertThat(found.plainWords())
                    .isEqualTo(new AssessSaid.TogetherUnsafe(Listed.and(List.of(
                            new AssessSaid.CrackAt(Listed.and(List.of(Corner.LF))),
                            new AssessSaid.DragAt(Listed.and(List.of(Corner.LF))),
                            new AssessSaid.FluidBoilsTooEarly()))));
            assertThat(found.todo()).isEqualTo(new Todo(Todo.Action.REPAIR, Todo.When.BEFORE_DRIVING));
        });
    }

    /** Drag boils the fluid, and drives the cracks of its own disc, not of another; without drag there is no heater. */
    @Test
    void withoutDragOrWithoutWhatItHeatsNothingIsAdded() {
        assertThat(together(DRAG, BOILS)).hasSize(1);
        assertThat(together(DRAG, CRACK, THICK)).hasSize(1);
        assertThat(together(CRACK, THICK, BOILS)).isEmpty();
        assertThat(together(DRAG)).isEmpty();
        assertThat(together(Cars.reading(Measure.WHEEL_TURNING, Corner.RF, null, null, 1), CRACK, THICK))
                .isEmpty();
        assertThat(together(CRACK, THICK, DRAG, read(Measure.WHEEL_TURNING_AFTER_SERVICE, 0)))
                .as("freed")
                .isEmpty();
        assertThat(together(CRACK, DRAG, read(Measure.DISC_REPLACED, 1)))
                .as("replaced")
                .isEmpty();
        assertThat(together(read(Measure.HOSE_HOLDS_PRESSURE, 1), BOILS)).hasSize(1);
    }

    /** Each alone: a wheel that hardly turns, and a crack to the edge (Québec, C-24.2, r. 32, s. 174 (2)), are unsafe by themselves. */
    @ParameterizedTest
    @CsvSource({
        "WHEEL_TURNING, 0, HOLDS",
        "WHEEL_TURNING, 1, SPENT",
        "WHEEL_TURNING, 2, UNSAFE",
        "DISC_CRACKS, 1, SPENT",
        "DISC_CRACKS, 2, UNSAFE"
    })
    void eachIsAsGraveAsItIs(Measure measure, double place, Verdict verdict) {
        assertThat(findings(read(measure, place), THICK).stream()
                        .filter(finding -> finding.subject().part() == Part.BRAKE_RELEASE
                                || finding.subject().part() == Part.DISC)
                        .map(Finding::verdict)
                        .max(Verdict::compareTo))
                .contains(verdict);
    }

    /**
     * One disc 57 °C hotter than the other drags, or the other does too little. A wheel held by hand says that it drags; a rusty face,
     * a seized pad or pads worn less say that the cool one is seized (docs/methods/brakes.md).
     */
    @Test
    void dragIsToldFromSeizing() {
        assertThat(atFault()).isEqualTo(AtFault.NOT_TOLD);
        assertThat(atFault(read(Measure.WHEEL_TURNING, 1))).isEqualTo(AtFault.HOT_DRAGS);
        assertThat(atFault(read(Measure.HOSE_HOLDS_PRESSURE, 1))).isEqualTo(AtFault.HOT_DRAGS);
        assertThat(atFault(read(Measure.PISTON_RETURN, 0.02))).isEqualTo(AtFault.HOT_DRAGS);
        assertThat(atFault(Cars.reading(Measure.DISC_RUST, Corner.RF, null, Spot.INNER, 30)))
                .isEqualTo(AtFault.COOL_DOES_TOO_LITTLE);
        assertThat(atFault(Cars.reading(Measure.PAD_MOVEMENT, Corner.RF, null, Spot.OUTER, 2)))
                .isEqualTo(AtFault.COOL_DOES_TOO_LITTLE);
        assertThat(atFault(pad(Corner.LF, 5), pad(Corner.RF, 8))).isEqualTo(AtFault.COOL_DOES_TOO_LITTLE);
        assertThat(atFault(
                        read(Measure.WHEEL_TURNING, 1),
                        Cars.reading(Measure.DISC_RUST, Corner.RF, null, Spot.INNER, 30)))
                .isEqualTo(AtFault.BOTH);
        assertThat(atFault(Cars.reading(Measure.DISC_RUST, Corner.LF, null, Spot.INNER, 30)))
                .as("rust at the hot one tells nothing of the cool one")
                .isEqualTo(AtFault.NOT_TOLD);
    }

    /** Within 0.1 mm of the limit on either side: the verdict stands, and disc and axle say together to measure again first. */
    @ParameterizedTest
    @CsvSource({
        "25.80, false",
        "25.90, true",
        "25.99, true",
        "26.00, true",
        "26.04, true",
        "26.10, true",
        "26.20, false"
    })
    void aDiscThatTheGaugeCannotTellFromItsLimitIsMeasuredAgain(double thicknessMm, boolean again) {
        var found = findings(read(Measure.DISC_THICKNESS, thicknessMm));
        var disc = only(found, Part.DISC);
        assertThat(words(disc).contains(new GaugeError.TooNearToTell(mm(26), mm(0.1))))
                .isEqualTo(again);
        assertThat(asks(disc) == Todo.Action.MEASURE_AGAIN).isEqualTo(again);
        if (disc.verdict() == Verdict.SPENT) {
            var axle = only(found, Part.BRAKE_PAIR);
            assertThat(words(axle).contains(new BrakeSaid.OnceReadAgain())).isEqualTo(again);
            assertThat(asks(axle)).isEqualTo(asks(disc));
        }
    }

    /** The same of pads, at the law and at the car's minimum; an indicator on the disc needs no gauge. */
    @ParameterizedTest
    @CsvSource({
        "1.4, false, 0",
        "1.5, true, 1.6",
        "1.7, true, 1.6",
        "2.5, false, 0",
        "2.9, true, 3",
        "3.1, true, 3",
        "3.2, false, 0"
    })
    void aPadThatTheGaugeCannotTellFromItsLimitIsMeasuredAgain(double thicknessMm, boolean again, double limitMm) {
        var pads = only(findings(pad(Corner.LF, thicknessMm), inner(9)), Part.PAD);
        assertThat(words(pads).contains(new GaugeError.TooNearToTell(mm(limitMm), mm(0.1))))
                .isEqualTo(again);
        assertThat(asks(pads) == Todo.Action.MEASURE_AGAIN).isEqualTo(again);
        var indicator = Cars.reading(Measure.PAD_WEAR_INDICATOR, Corner.LF, null, Spot.OUTER, 2);
        assertThat(asks(only(findings(pad(Corner.LF, thicknessMm), inner(9), indicator), Part.PAD)))
                .isEqualTo(Todo.Action.REPLACE_PAIR);
    }

    /** A crack decides whatever the gauge says. */
    @Test
    void noGaugeTakesACrackBack() {
        assertThat(asks(only(findings(read(Measure.DISC_THICKNESS, 26), CRACK), Part.DISC)))
                .isEqualTo(Todo.Action.REPLACE_PAIR);
    }

    /** While the micrometer is in the hand: nearer than it can tell is read again, farther is replaced; the verdict is the same. */
    @ParameterizedTest
    @CsvSource({"25.95, true", "25.80, false"})
    void theSameIsToldAtOnce(double thicknessMm, boolean again) {
        var limits = new Assessor(Cars.LIMITS)
                .limits(Cars.history(Cars.visit(List.of())), "v").stream()
                        .filter(limit -> limit.measure() == Measure.DISC_THICKNESS
                                && limit.subject().corner() == Corner.LF)
                        .toList();
        assertThat(ReadingLimit.broken(limits, thicknessMm)).hasValueSatisfying(limit -> {
            assertThat(limit.outside()).isEqualTo(Verdict.SPENT);
            assertThat(limit.sentence() instanceof GaugeError.ReadAgain).isEqualTo(again);
            assertThat(limit.sentence() instanceof DiscSaid.Replace).isEqualTo(!again);
        });
    }

    private static AtFault atFault(Reading... beside) {
        var readings = Stream.concat(
                        Stream.of(
                                read(Measure.DISC_TEMPERATURE, 121),
                                Cars.reading(Measure.DISC_TEMPERATURE, Corner.RF, null, null, 64)),
                        Arrays.stream(beside))
                .toArray(Reading[]::new);
        return findings(readings).stream()
                .filter(finding -> finding.plainWords() instanceof OneIsHotter)
                .map(finding -> ((OneIsHotter) finding.plainWords()).atFault())
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding> together(Reading... readings) {
        return findings(readings).stream()
                .filter(finding -> finding.subject().part() == Part.BRAKES)
                .toList();
    }

    private static Finding only(List<Finding> findings, Part part) {
        var found = findings.stream()
                .filter(finding -> finding.subject().part() == part)
                .filter(finding -> part != Part.PAD || finding.title() instanceof PadSaid.ReadTitle)
                .toList();
        assertThat(found).as(part.name()).hasSize(1);
        return found.getFirst();
    }

    private static Todo.Action asks(Finding finding) {
        var todo = finding.todo();
        return todo == null ? Todo.Action.ORDER : todo.action();
    }

    private static List<Said> words(Finding finding) {
        return finding.plainWords() instanceof Listed listed ? listed.items() : List.of(finding.plainWords());
    }

    private static List<Finding> findings(Reading... readings) {
        return BrakeFindings.judge(Cases.of(Cars.vehicle(), Cars.visit(new ArrayList<>(List.of(readings))))
                        .until(Cars.AUTUMN.plusDays(180))
                        .last())
                .findings();
    }

    private static Amount mm(double value) {
        return new Amount(value, "mm", 1);
    }

    private static Reading pad(Corner corner, double thicknessMm) {
        return Cars.reading(Measure.PAD_THICKNESS, corner, null, Spot.OUTER, thicknessMm);
    }

    private static Reading inner(double thicknessMm) {
        return Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, thicknessMm);
    }

    private static Reading read(Measure measure, double value) {
        return Cars.reading(measure, Corner.LF, null, null, value);
    }
}
