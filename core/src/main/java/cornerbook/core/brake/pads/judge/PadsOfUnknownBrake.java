package cornerbook.core.brake.pads.judge;

import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import java.util.List;
import java.util.Optional;

/**
 * Finding on pads of a brake that nobody has looked up: what lies below the law's minimum is unsafe whatever the vehicle's maker
 * asks for. How long more lasts is not judged.
 */
public final class PadsOfUnknownBrake {
    private PadsOfUnknownBrake() {}

    /** One finding for the thinner pad of a corner where it is below the law's minimum; none for more. */
    public static Judgement judge(Case given, BrakeCorner at) {
        var legal = given.limit(Limit.Kind.PAD_LEGAL);
        return at.done(Measure.PADS_REPLACED)
                ? Judgement.NONE
                : thinner(at)
                        .filter(side -> at.padMm(side).orElseThrow() < legal.value())
                        .map(side -> Judgement.of(below(at, side, at.padMm(side).orElseThrow(), legal)))
                        .orElse(Judgement.NONE);
    }

    private static Optional<Spot> thinner(BrakeCorner at) {
        return BrakeCorner.SIDES.stream()
                .filter(side -> at.padMm(side).isPresent())
                .min((one, other) -> Double.compare(
                        at.padMm(one).orElseThrow(), at.padMm(other).orElseThrow()));
    }

    private static Finding below(BrakeCorner at, Spot side, double thicknessMm, Limit legal) {
        var minimum = mm(legal.value());
        return new Finding(
                        new Subject(Subject.Part.PAD, at.corner(), null, null),
                        Verdict.UNSAFE,
                        new PadSaid.OneReadTitle(at.corner(), side, mm(thicknessMm), minimum),
                        new PadSaid.BelowLegal(at.corner()),
                        null,
                        null,
                        0,
                        List.of(
                                new Evidence(side, mm(thicknessMm), BrakeSaid.Ground.RECORDED),
                                new Evidence(BrakeSaid.LeastForTheRoad.of(legal), minimum, legal.citation()),
                                Deficiency.PAD_BELOW_LIMIT.evidence()),
                        new PadSaid.Source(legal.citation()))
                .todo(Todo.Action.REPLACE_PAIR);
    }

    private static Amount mm(double thicknessMm) {
        return new Amount(thicknessMm, "mm", 1);
    }
}
