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

/** Finding on how the pads of one corner move in their bracket, by hand. */
public final class PadMovementFindings {
    private static final int TIGHT = 1;
    private static final int SEIZED = 2;

    private PadMovementFindings() {}

    /** The finding on the pad that moves worst; empty when both are free or nobody moved them. */
    public static Optional<Finding> of(BrakeCorner at, LocalDate nextVisit) {
        return at.worst(Measure.PAD_MOVEMENT)
                .filter(worst -> Math.round(worst.value()) >= TIGHT)
                .map(worst -> stuck(at, worst, nextVisit));
    }

    /** What was freed is taken to hold until somebody looks again: at the next visit, and no longer. */
    private static Finding stuck(BrakeCorner at, Reading worst, LocalDate nextVisit) {
        boolean seized = Math.round(worst.value()) >= SEIZED;
        boolean freed = at.done(Measure.PADS_REPLACED)
                || at.read(Measure.PAD_MOVEMENT_AFTER_SERVICE)
                        .filter(after -> Math.round(after.value()) < TIGHT)
                        .isPresent();
        var side = BrakeCorner.side(worst);
        return new Finding(
                        new Subject(Subject.Part.PAD, at.corner(), null, null),
                        seized && !freed ? Verdict.SPENT : Verdict.RUNS_OUT,
                        new CaliperSaid.StuckTitle(at.corner(), side, seized, freed),
                        new CaliperSaid.Stuck(at.corner(), seized, freed),
                        freed ? nextVisit : null,
                        null,
                        freed ? 1 : seized ? 0 : 0.5,
                        List.of(new Evidence(
                                new CaliperSaid.ByHand(side),
                                new CaliperSaid.PadMoves(seized),
                                Evidence.howRead(worst))),
                        CaliperSaid.Ground.YEARLY_CLEANING)
                .todo(Todo.Action.SERVICE_BRAKE, freed ? Todo.When.AT_NEXT_VISIT : Todo.When.NOW);
    }
}
