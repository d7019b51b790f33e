package cornerbook.core.brake.pads.judge;

import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Scale;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import java.util.List;
import java.util.Optional;

/** Finding on friction material that comes off its plate: rust under it lifts it, and it is rejected whatever its thickness. */
public final class EdgeLiftFindings {
    private EdgeLiftFindings() {}

    /** The finding; empty when none lifts, nobody looked, or the pads were replaced. */
    public static Optional<Finding> of(BrakeCorner at) {
        return at.worst(Measure.PAD_EDGE_LIFT)
                .filter(lift -> Math.round(lift.value()) > 0 && !at.done(Measure.PADS_REPLACED))
                .map(lift -> new Finding(
                                new Subject(Subject.Part.PAD, at.corner(), null, null),
                                Verdict.SPENT,
                                new PadSaid.LiningLiftsTitle(at.corner(), BrakeCorner.side(lift)),
                                new PadSaid.LiningLifts(at.corner()),
                                null,
                                null,
                                0,
                                List.of(new Evidence(
                                        new PadSaid.EdgeLift(BrakeCorner.side(lift)),
                                        Scale.AMOUNT.told(lift.value()),
                                        Evidence.howRead(lift))),
                                PadSaid.Ground.REJECT_ON_EDGE_LIFT)
                        .todo(Todo.Action.REPLACE_PAIR));
    }
}
