package cornerbook.core.release;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.Assessor;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a technician has forgotten now and then: common practice, no source; and what the judges call unsafe. */
class ReleaseTest {
    private static final Set<Corner> NONE = EnumSet.noneOf(Corner.class);
    private static final Set<Corner> ALL = EnumSet.allOf(Corner.class);

    @Test
    void aCarThatWasOnlyLookedAtMayLeave() {
        assertThat(open(inTheBay(), NONE)).isEmpty();
    }

    /** The wheels of a brake visit were off, whether or not a set was swapped. */
    @Test
    void aBrakeVisitAsksWhichWheelsAreOnAndThenForTheTorqueOfEach() {
        var read = Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5);
        assertThat(open(inTheBay(read), NONE)).containsExactly("WHEELS");
        var on = Cars.visit(List.of(read));
        assertThat(open(on, NONE)).containsExactly("TORQUE.LF", "TORQUE.RF", "TORQUE.LR", "TORQUE.RR");
        assertThat(open(on, EnumSet.complementOf(EnumSet.of(Corner.LR)))).containsExactly("TORQUE.LR");
        assertThat(open(on, ALL)).isEmpty();
    }

    /** A paper that says four times that a wheel is not torqued is not read; what is unsafe stands alone. */
    @Test
    void whatIsOpenAtSeveralCornersIsTogetherWhereTheFirstOfItStands() {
        var unsafe = OpenPoint.unsafe(new Subject(Subject.Part.PAD, Corner.LF, null, null), Said.verbatim("pad"));
        var other = OpenPoint.unsafe(new Subject(Subject.Part.PAD, Corner.RF, null, null), Said.verbatim("pad"));
        var pedal = OpenPoint.work(OpenPoint.Kind.PEDAL, null);
        var caliper = OpenPoint.work(OpenPoint.Kind.CALIPER, Corner.LF);
        assertThat(OpenPoint.together(List.of(
                        unsafe,
                        OpenPoint.work(OpenPoint.Kind.TORQUE, Corner.LF),
                        other,
                        caliper,
                        OpenPoint.work(OpenPoint.Kind.TORQUE, Corner.RR),
                        pedal)))
                .containsExactly(
                        unsafe,
                        new OpenPoint.AtCorners(OpenPoint.Kind.TORQUE, Listed.and(List.of(Corner.LF, Corner.RR))),
                        other,
                        caliper,
                        pedal);
    }

    /** A hole is plugged from inside (tyre manufacturers' repair rules), and a wheel is balanced on its machine: it was off. */
    @Test
    void workForWhichAWheelComesOffAsksWhichWheelsAreOn() {
        for (var work : Map.of(Measure.PUNCTURE_REPAIRED, 1.0, Measure.BALANCE_WEIGHTS, 25.0)
                .entrySet()) {
            var done = Cars.reading(work.getKey(), Corner.RR, "S-RR", null, work.getValue());
            assertThat(open(inTheBay(done), NONE)).containsExactly("WHEELS");
            assertThat(open(Cars.visit(List.of(done)), EnumSet.complementOf(EnumSet.of(Corner.RR))))
                    .containsExactly("TORQUE.RR");
            var stored = Cars.reading(work.getKey(), Corner.RR, "W-RR", null, work.getValue());
            assertThat(open(inTheBay(stored), NONE))
                    .as("a wheel that was not on the car")
                    .isEmpty();
        }
        var not = Cars.reading(Measure.PUNCTURE_REPAIRED, Corner.RR, "S-RR", null, 0);
        assertThat(open(inTheBay(not), NONE)).isEmpty();
    }

    /** Fluid is changed through opened bleeders: the pedal is tried before the car moves. */
    @Test
    void freshFluidAsksForThePedal() {
        var fresh = Cars.reading(Measure.BRAKE_FLUID_REPLACED, null, null, null, 1);
        assertThat(open(inTheBay(fresh), NONE)).containsExactly("PEDAL");
        var pumped = Cars.reading(Measure.PEDAL_PUMPED, null, null, null, 1);
        assertThat(open(inTheBay(fresh, pumped), NONE)).isEmpty();
        var not = Cars.reading(Measure.BRAKE_FLUID_REPLACED, null, null, null, 0);
        assertThat(open(inTheBay(not), NONE)).isEmpty();
    }

    @Test
    void heatOfTheDiscsIsReadWithTheWheelsOn() {
        var warm = Cars.reading(Measure.DISC_TEMPERATURE, Corner.RR, null, null, 60);
        assertThat(open(inTheBay(warm), NONE)).isEmpty();
    }

    @Test
    void onlyTheAxleWhoseBrakesWereOpenedHasNewlyMovedParts() {
        var looked = Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 8.5);
        var opened = Cars.reading(Measure.BRACKET_CLEANED, Corner.RR, null, null, 1);
        var not = Cars.reading(Measure.PADS_REPLACED, Corner.LF, null, null, 0);
        assertThat(Release.brakesOpened(inTheBay(looked, not))).isEmpty();
        assertThat(Release.brakesOpened(inTheBay(looked, opened, not))).containsExactly(Axle.REAR);
    }

    @Test
    void whatWasBegunAtABrakeHasToBeEnded() {
        var begun = List.of(
                Cars.reading(Measure.PARKING_BRAKE_IN_SERVICE_MODE, null, null, null, 1),
                Cars.reading(Measure.DISC_REPLACED, Corner.LF, null, null, 1),
                Cars.reading(Measure.PIN_LUBRICANT, Corner.RF, null, null, 1));
        assertThat(open(Cars.visit(begun), ALL))
                .containsExactly("SERVICE_MODE", "CALIPER.LF", "BRACKET.LF", "CALIPER.RF", "PEDAL");
        var ended = and(
                begun,
                Cars.reading(Measure.PARKING_BRAKE_CYCLED, null, null, null, 1),
                Cars.reading(Measure.CALIPER_CLOSED, Corner.LF, null, null, 1),
                Cars.reading(Measure.BRACKET_BOLTS_TORQUED, Corner.LF, null, null, 1),
                Cars.reading(Measure.CALIPER_CLOSED, Corner.RF, null, null, 1),
                Cars.reading(Measure.PEDAL_PUMPED, null, null, null, 1));
        assertThat(open(Cars.visit(ended), ALL)).isEmpty();
    }

    /** Somebody looked, and says that it is not: that opens it by itself. */
    @Test
    void aStepThatIsAnsweredNotDoneIsOpen() {
        for (var step : Map.of(Measure.PEDAL_PUMPED, "PEDAL", Measure.PARKING_BRAKE_CYCLED, "SERVICE_MODE")
                .entrySet()) {
            var said = Cars.reading(step.getKey(), null, null, null, 0);
            assertThat(open(inTheBay(said), NONE)).containsExactly(step.getValue());
        }
        for (var step : Map.of(Measure.CALIPER_CLOSED, "CALIPER.LR", Measure.BRACKET_BOLTS_TORQUED, "BRACKET.LR")
                .entrySet()) {
            var said = Cars.reading(step.getKey(), Corner.LR, null, null, 0);
            assertThat(open(Cars.visit(List.of(said)), ALL)).containsExactly(step.getValue());
        }
        assertThat(open(Cars.visit(List.of(Cars.reading(Measure.PADS_REPLACED, Corner.LR, null, null, 0))), ALL))
                .as("no pads were replaced: nothing to close")
                .isEmpty();
    }

    /** The car's specification asks 140 N·m; 0.95 and 1.10 of it are common practice, no source. */
    @Test
    void aTorqueOutsideItsLimitsOnEitherSideIsOpen() {
        assertThat(torqued(140)).isEmpty();
        assertThat(torqued(112)).containsExactly("UNSAFE.WHEEL_TORQUE.LF");
        assertThat(torqued(175)).containsExactly("UNSAFE.WHEEL_TORQUE.LF");
    }

    private static List<String> torqued(double newtonMetres) {
        var readings = Arrays.stream(Corner.values())
                .map(corner -> Cars.reading(
                        Measure.WHEEL_TORQUE,
                        corner,
                        Cars.at("S-").get(corner),
                        null,
                        corner == Corner.LF ? newtonMetres : 140))
                .toList();
        return open(Cars.visit(readings), ALL);
    }

    /** Torqued at this visit, or taken off: once it is recorded which wheels are on, each of them asks for its torque. */
    @Test
    void aRetorqueThatWasMissedIsOpenUntilEachWheelThatGoesAsksForItsTorque() {
        var missed = ReleaseRule.all(false, true);
        assertThat(open(inTheBay(), NONE, missed, List.of())).containsExactly("RETORQUE");
        var on = Cars.visit(List.of());
        assertThat(open(on, NONE, missed, List.of()))
                .containsExactly("TORQUE.LF", "TORQUE.RF", "TORQUE.LR", "TORQUE.RR");
        assertThat(open(on, ALL, missed, List.of())).isEmpty();
    }

    /** A tablet without a network opens the point that the book will open. */
    @Test
    void aReadingOutsideItsLimitOpensThePointOfItsFinding() {
        var history = Cars.history(Cars.visit(List.of()));
        var points = new Assessor(Cars.LIMITS)
                .limits(history, history.visits().getLast().id()).stream()
                        .flatMap(limit -> Release.unsafe(limit).stream())
                        .map(OpenPoint::key)
                        .distinct()
                        .toList();
        var parts = List.of("UNSAFE.WHEEL_TORQUE.", "UNSAFE.PRESSURE.", "UNSAFE.PAD.", "UNSAFE.DISC.");
        var expected = new ArrayList<>(List.of("UNSAFE.WHEEL_SET"));
        parts.forEach(part -> Arrays.stream(Corner.values()).forEach(corner -> expected.add(part + corner)));
        assertThat(points).containsExactlyInAnyOrderElementsOf(expected);
    }

    /** 0.5 mm of lining, where the law of the place asks 1.6. */
    @Test
    void whatIsUnsafeIsOpen() {
        var thin = Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 0.5);
        var other = Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.OUTER, 4.5);
        assertThat(open(Cars.visit(List.of(thin, other)), ALL)).containsExactly("UNSAFE.PAD.LF");
        assertThat(open(Cars.visit(List.of(thin)), ALL))
                .as("the other pad was not read: one below the limit is enough")
                .containsExactly("UNSAFE.PAD.LF");
        var replaced = Cars.reading(Measure.PADS_REPLACED, Corner.LF, null, null, 1);
        assertThat(open(Cars.visit(List.of(thin, other, replaced)), ALL))
                .as("the old pads are in the bin")
                .doesNotContain("UNSAFE.PAD.LF");
    }

    /**
     * A reading beyond what the manufacturer asks keeps the car as one below the law does: somebody says why it leaves all the same.
     * The car asks 3 mm of a pad, 26 mm of a disc and 280 kPa; what we advise beyond the law, 3 mm of tread in summer, keeps none.
     */
    @Test
    void whatIsBeyondItsLimitIsOpen() {
        var inner = Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 2.5);
        var outer = Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.OUTER, 4.5);
        assertThat(open(Cars.visit(List.of(inner, outer)), ALL)).containsExactly("UNSAFE.PAD.LF");
        var disc = Cars.reading(Measure.DISC_THICKNESS, Corner.RF, null, null, 25.5);
        assertThat(open(Cars.visit(List.of(disc)), ALL)).containsExactly("UNSAFE.DISC.RF");
        var air = Cars.reading(Measure.PRESSURE_SET, Corner.LR, "S-LR", null, 180);
        assertThat(open(Cars.visit(List.of(air)), ALL)).containsExactly("UNSAFE.PRESSURE.LR");
        var tread = Cars.reading(Measure.TREAD_DEPTH, Corner.LF, "S-LF", Spot.INNER, 2.5);
        assertThat(open(Cars.visit(List.of(tread)), ALL)).isEmpty();
    }

    /** What the hoist may not carry is the shop's matter. */
    @Test
    void theShopsOwnHoistKeepsNoCar() {
        var said = Said.verbatim("too heavy for the hoist");
        var lift = new Finding(
                new Subject(Subject.Part.LIFT, null, null, null),
                Verdict.UNSAFE,
                said,
                said,
                null,
                null,
                0,
                List.of(),
                said);
        assertThat(open(Cars.visit(List.of()), ALL, ReleaseRule.all(false, false), List.of(lift)))
                .isEmpty();
    }

    /** Before it is recorded on which wheels it leaves. */
    private static Visit inTheBay(Reading... readings) {
        return Cars.visit(List.of(readings)).withLeftOn(Map.of());
    }

    private static List<String> open(Visit visit, Set<Corner> tight) {
        var history = Cars.history(visit);
        var findings = new Assessor(Cars.LIMITS).assess(history, visit.id()).findings();
        return open(visit, tight, ReleaseRule.all(false, false), findings);
    }

    private static List<String> open(Visit visit, Set<Corner> tight, List<ReleaseRule> rules, List<Finding> findings) {
        return Release.of(visit, tight, rules, false, findings).stream()
                .map(OpenPoint::key)
                .toList();
    }

    private static List<Reading> and(List<Reading> readings, Reading... more) {
        var all = new ArrayList<>(readings);
        all.addAll(List.of(more));
        return all;
    }
}
