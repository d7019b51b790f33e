package cornerbook.core.brake.caliper;

import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finding on how the pads of one corner move in their bracket, by hand. */
public final class PadMovementFindings {
    private static final int TIGHT = 1;
    private static final int SEIZED = 2;

    private PadMovementFindings() {}

    /** The finding on the pad that moves worst, and on what cleaning left; empty when both are free or nobody moved them. */
    public static Optional<Finding> of(BrakeCorner at, LocalDate nextVisit) {
        var found = at.worst(Measure.PAD_MOVEMENT).filter(worst -> place(worst) >= TIGHT);
        var left = at.done(Measure.PADS_REPLACED)
                ? Optional.<Reading>empty()
                : at.read(Measure.PAD_MOVEMENT_AFTER_SERVICE);
        return left.filter(after ->
                        place(after) > found.map(PadMovementFindings::place).orElse(0L))
                .map(after -> leftStuck(at, after))
                .or(() -> found.map(worst -> stuck(at, worst, left, nextVisit)));
    }

    /** Cleaned, and not free: nothing outranks what the hand felt last. */
    private static Finding leftStuck(BrakeCorner at, Reading after) {
        boolean seized = place(after) >= SEIZED;
        return new Finding(
                        new Subject(Subject.Part.PAD, at.corner(), null, null),
                        seized ? Verdict.SPENT : Verdict.RUNS_OUT,
                        new CaliperSaid.LeftStuckTitle(at.corner(), seized),
                        new CaliperSaid.LeftStuck(at.corner(), seized),
                        null,
                        null,
                        seized ? 0 : 0.5,
                        evidence(at.worst(Measure.PAD_MOVEMENT), Optional.of(after)),
                        CaliperSaid.Ground.YEARLY_CLEANING)
                .todo(Todo.Action.SERVICE_BRAKE, Todo.When.NOW);
    }

    /** What was freed is taken to hold until somebody looks again: at the next visit, and no longer. */
    private static Finding stuck(BrakeCorner at, Reading worst, Optional<Reading> left, LocalDate nextVisit) {
        boolean seized = place(worst) >= SEIZED;
        boolean freed = at.done(Measure.PADS_REPLACED)
                || left.filter(after -> place(after) < TIGHT).isPresent();
        return new Finding(
                        new Subject(Subject.Part.PAD, at.corner(), null, null),
                        seized && !freed ? Verdict.SPENT : Verdict.RUNS_OUT,
                        new CaliperSaid.StuckTitle(at.corner(), BrakeCorner.side(worst), seized, freed),
                        new CaliperSaid.Stuck(at.corner(), seized, freed),
                        freed ? nextVisit : null,
                        null,
                        freed ? 1 : seized ? 0 : 0.5,
                        evidence(Optional.of(worst), left),
                        CaliperSaid.Ground.YEARLY_CLEANING)
                .todo(Todo.Action.SERVICE_BRAKE, freed ? Todo.When.AT_NEXT_VISIT : Todo.When.NOW);
    }

    private static List<Evidence> evidence(Optional<Reading> found, Optional<Reading> left) {
        return Stream.concat(
                        found.stream()
                                .map(worst -> new Evidence(
                                        new CaliperSaid.ByHand(BrakeCorner.side(worst)),
                                        new CaliperSaid.PadMoves((int) place(worst)),
                                        Evidence.howRead(worst))),
                        left.stream()
                                .map(after -> new Evidence(
                                        CaliperSaid.Label.AFTER_SERVICE,
                                        new CaliperSaid.PadMoves((int) place(after)),
                                        Evidence.howRead(after))))
                .toList();
    }

    private static long place(Reading movement) {
        return Math.round(movement.value());
    }
}
