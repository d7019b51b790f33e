package cornerbook.core.brake.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureAt;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether the brake of one corner lets go, told apart from one that does too little. A brake that drags holds a wheel turned by hand,
 * is hot, and wears; one that is seized does not press, so its disc rusts, stays cool, and its pads stay thicker than those of the
 * other side. Which reading speaks for which: docs/methods/brakes.md.
 */
public final class BrakeRelease {
    /** Share of a face under rust from which a pad there does not work, as for the disc. Common practice, no source. */
    private static final double RUSTY_PERCENT = 15;
    /** By how much pads are thicker than those of the other side that does the work. Common practice, no source. */
    private static final double WORN_LESS_MM = 2;

    private static final int HARDLY_TURNS = 2;

    private BrakeRelease() {}

    /** A reading that speaks for drag, or for a brake that does too little. */
    public enum Sign implements Said {
        WHEEL_HELD,
        HOSE_HOLDS_PRESSURE,
        PISTON_STAYS_OUT,
        PARKING_LEVER_STUCK,
        RUSTY_FACE,
        PAD_SEIZED,
        WORN_LESS_THAN_OTHER_SIDE
    }

    record DragTitle(Corner corner, boolean hardlyTurns, boolean freed) implements Said {}

    record Drags(Corner corner, boolean hardlyTurns) implements Said {}

    record SignsBeside(Listed signs) implements Said {}

    record Freed(Corner corner, boolean hardlyTurned) implements Said {}

    enum Ground implements Said {
        FREE_WHEEL_LAW
    }

    /** The finding; empty where the wheel turns freely, or nobody turned it. */
    public static Optional<Finding> of(BrakeCorner at) {
        var found = at.read(Measure.WHEEL_TURNING).filter(reading -> place(reading) > 0);
        var left = at.read(Measure.WHEEL_TURNING_AFTER_SERVICE);
        return left.filter(reading -> place(reading) > 0)
                .or(() -> found)
                .map(worst -> finding(at, worst, left.filter(reading -> place(reading) == 0)));
    }

    private static Finding finding(BrakeCorner at, Reading worst, Optional<Reading> freed) {
        boolean hardlyTurns = place(worst) >= HARDLY_TURNS;
        var words = new ArrayList<Said>();
        words.add(freed.isPresent() ? new Freed(at.corner(), hardlyTurns) : new Drags(at.corner(), hardlyTurns));
        var beside =
                signsOfDrag(at).stream().filter(sign -> sign != Sign.WHEEL_HELD).toList();
        if (!beside.isEmpty()) {
            words.add(new SignsBeside(Listed.and(beside)));
        }
        var evidence = new ArrayList<Evidence>();
        evidence.add(turned(worst));
        freed.ifPresent(reading -> evidence.add(turned(reading)));
        var verdict = freed.isPresent() ? Verdict.HOLDS : hardlyTurns ? Verdict.UNSAFE : Verdict.SPENT;
        var finding = new Finding(
                new Subject(Subject.Part.BRAKE_RELEASE, at.corner(), null, null),
                verdict,
                new DragTitle(at.corner(), hardlyTurns, freed.isPresent()),
                Listed.sentences(words),
                null,
                null,
                freed.isPresent() ? 1 : 0,
                evidence,
                Ground.FREE_WHEEL_LAW);
        return freed.isPresent()
                ? finding.todo(Todo.Action.INSPECT, Todo.When.AT_NEXT_VISIT)
                : finding.todo(Todo.Action.REPAIR);
    }

    private static Evidence turned(Reading reading) {
        return new Evidence(
                new MeasureAt(reading.measure(), null),
                Objects.requireNonNull(reading.measure().scale()).told(reading.value()),
                Evidence.howRead(reading));
    }

    /** What says that the brake does not let go; empty where nothing does. */
    static List<Sign> signsOfDrag(BrakeCorner at) {
        var signs = new ArrayList<Sign>();
        if (Math.max(at.place(Measure.WHEEL_TURNING), at.place(Measure.WHEEL_TURNING_AFTER_SERVICE)) > 0) {
            signs.add(Sign.WHEEL_HELD);
        }
        if (at.done(Measure.HOSE_HOLDS_PRESSURE)) {
            signs.add(Sign.HOSE_HOLDS_PRESSURE);
        }
        if (at.read(Measure.PISTON_RETURN)
                .filter(returned ->
                        at.brake().hasDisc() && returned.value() <= at.brake().runoutLimitMm())
                .isPresent()) {
            signs.add(Sign.PISTON_STAYS_OUT);
        }
        if (at.read(Measure.PARKING_LEVER_MOVEMENT).filter(Reading::isWorst).isPresent()) {
            signs.add(Sign.PARKING_LEVER_STUCK);
        }
        return signs;
    }

    /** What says that the brake presses too little, or not at all; empty where nothing does. */
    static List<Sign> signsOfTooLittle(BrakeCorner at) {
        var signs = new ArrayList<Sign>();
        if (at.worst(Measure.DISC_RUST)
                .filter(rust -> rust.value() >= RUSTY_PERCENT)
                .isPresent()) {
            signs.add(Sign.RUSTY_FACE);
        }
        if (at.worst(Measure.PAD_MOVEMENT).filter(Reading::isWorst).isPresent()) {
            signs.add(Sign.PAD_SEIZED);
        }
        var here = at.thinnestPadMm();
        var there = at.otherSide().thinnestPadMm();
        if (here.isPresent() && there.isPresent() && here.getAsDouble() - there.getAsDouble() >= WORN_LESS_MM) {
            signs.add(Sign.WORN_LESS_THAN_OTHER_SIDE);
        }
        return signs;
    }

    private static long place(Reading reading) {
        return Math.round(reading.value());
    }
}
