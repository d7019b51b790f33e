package cornerbook.core.brake.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.judge.BrakeRelease.DragTitle;
import cornerbook.core.brake.judge.BrakeRelease.Drags;
import cornerbook.core.brake.judge.BrakeRelease.Freed;
import cornerbook.core.brake.judge.BrakeRelease.Sign;
import cornerbook.core.brake.judge.BrakeRelease.SignsBeside;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wheel at LF of an invented car that is turned by hand: 0 freely, 1 it drags, 2 it hardly turns. Common practice, no source. */
class BrakeReleaseTest {
    private static final Reading HOSE_HOLDS = read(Measure.HOSE_HOLDS_PRESSURE, 1);

    @ParameterizedTest
    @CsvSource({"1, SPENT, false", "2, UNSAFE, true"})
    void aWheelThatIsHeldIsToBeRepaired(double turning, Verdict verdict, boolean hardlyTurns) {
        var finding = found(read(Measure.WHEEL_TURNING, turning));
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.title()).isEqualTo(new DragTitle(Corner.LF, hardlyTurns, false));
        assertThat(finding.plainWords()).isEqualTo(Listed.sentences(List.of(new Drags(Corner.LF, hardlyTurns))));
        assertThat(finding.subject()).isEqualTo(new Subject(Subject.Part.BRAKE_RELEASE, Corner.LF, null, null));
        assertThat(finding.todo()).extracting(Todo::action).isEqualTo(Todo.Action.REPAIR);
        assertThat(finding.lifeLeft()).isZero();
        assertThat(finding.evidence()).hasSize(1);
    }

    @Test
    void aWheelThatTurnsFreelyOrThatNobodyTurnedIsNoFinding() {
        assertThat(of()).isEmpty();
        assertThat(of(read(Measure.WHEEL_TURNING, 0))).isEmpty();
        assertThat(of(read(Measure.WHEEL_TURNING_AFTER_SERVICE, 0)))
                .as("turned only after the brake was freed")
                .isEmpty();
    }

    /** What was found stays told, with both readings: it is looked at next time. */
    @ParameterizedTest
    @CsvSource({"1, false", "2, true"})
    void aWheelThatWasFreedHoldsAndIsLookedAtNextTime(double turning, boolean hardlyTurned) {
        var finding = found(read(Measure.WHEEL_TURNING, turning), read(Measure.WHEEL_TURNING_AFTER_SERVICE, 0));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.title()).isEqualTo(new DragTitle(Corner.LF, hardlyTurned, true));
        assertThat(finding.plainWords()).isEqualTo(Listed.sentences(List.of(new Freed(Corner.LF, hardlyTurned))));
        assertThat(finding.todo()).isEqualTo(new Todo(Todo.Action.INSPECT, Todo.When.AT_NEXT_VISIT));
        assertThat(finding.lifeLeft()).isEqualTo(1);
        assertThat(finding.evidence())
                .extracting(Evidence::what)
                .extracting(Object::toString)
                .satisfiesExactly(
                        found -> assertThat(found).contains("WHEEL_TURNING,"),
                        left -> assertThat(left).contains("WHEEL_TURNING_AFTER_SERVICE"));
    }

    /** Service that only helped a little has not freed it, and what is left is what counts. */
    @Test
    void aWheelThatStillDragsIsNotFreed() {
        var finding = found(read(Measure.WHEEL_TURNING, 2), read(Measure.WHEEL_TURNING_AFTER_SERVICE, 1));
        assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(finding.title()).isEqualTo(new DragTitle(Corner.LF, false, false));
        assertThat(finding.evidence()).hasSize(1);
    }

    @Test
    void whatElseSpeaksForDragIsToldBesideIt() {
        assertThat(found(read(Measure.WHEEL_TURNING, 1), HOSE_HOLDS).plainWords())
                .isEqualTo(Listed.sentences(List.of(
                        new Drags(Corner.LF, false), new SignsBeside(Listed.and(List.of(Sign.HOSE_HOLDS_PRESSURE))))));
    }

    /** A piston that comes back by no more than the disc may run out keeps the pads on the disc. */
    @Test
    void aPistonThatComesBackByLessThanTheDiscRunsOutStaysOut() {
        double runoutMm = corner(Cars.vehicle()).brake().runoutLimitMm();
        assertThat(drag(read(Measure.PISTON_RETURN, runoutMm))).containsExactly(Sign.PISTON_STAYS_OUT);
        assertThat(drag(read(Measure.PISTON_RETURN, runoutMm + 0.01))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, false", "1, false", "2, true"})
    void aParkingLeverIsStuckWhenItDoesNotMove(double movement, boolean stuck) {
        var rear = new BrakeCorner(
                Corner.LR,
                Cars.withRearParkingShoes(null),
                new StandingReadings(
                        List.of(Cars.reading(Measure.PARKING_LEVER_MOVEMENT, Corner.LR, null, null, movement))));
        assertThat(BrakeRelease.signsOfDrag(rear).contains(Sign.PARKING_LEVER_STUCK))
                .isEqualTo(stuck);
    }

    /** Rust on 15 % of the swept face and more: the pads do not clean it. */
    @ParameterizedTest
    @CsvSource({"14, false", "15, true", "40, true"})
    void aRustyFaceIsNotBrakedOn(double percent, boolean rusty) {
        assertThat(tooLittle(Cars.reading(Measure.DISC_RUST, Corner.LF, null, Spot.OUTER, percent))
                        .contains(Sign.RUSTY_FACE))
                .isEqualTo(rusty);
    }

    /** Pads that are 2 mm thicker than those of the other side work less; thinner ones work more. */
    @ParameterizedTest
    @CsvSource({"8.0, 6.0, true", "7.9, 6.0, false", "6.0, 8.0, false", "3.0, 4.0, false"})
    void padsThatAreTwoMillimetresThickerWorkLess(double hereMm, double thereMm, boolean less) {
        assertThat(tooLittle(pad(Corner.LF, hereMm), pad(Corner.RF, thereMm)).contains(Sign.WORN_LESS_THAN_OTHER_SIDE))
                .isEqualTo(less);
        assertThat(tooLittle(pad(Corner.LF, hereMm)))
                .as("nothing to compare with")
                .isEmpty();
    }

    private static Finding found(Reading... readings) {
        return of(readings).orElseThrow();
    }

    private static Optional<Finding> of(Reading... readings) {
        return BrakeRelease.of(corner(Cars.vehicle(), readings));
    }

    private static List<Sign> drag(Reading... readings) {
        return BrakeRelease.signsOfDrag(corner(Cars.vehicle(), readings));
    }

    private static List<Sign> tooLittle(Reading... readings) {
        return BrakeRelease.signsOfTooLittle(corner(Cars.vehicle(), readings));
    }

    private static BrakeCorner corner(Vehicle car, Reading... readings) {
        return new BrakeCorner(Corner.LF, car, new StandingReadings(List.of(readings)));
    }

    private static Reading pad(Corner corner, double thicknessMm) {
        return Cars.reading(Measure.PAD_THICKNESS, corner, null, Spot.OUTER, thicknessMm);
    }

    private static Reading read(Measure measure, double value) {
        return Cars.reading(measure, Corner.LF, null, null, value);
    }
}
