package cornerbook.core.tyre.judge;

import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tyre.SetFit;
import cornerbook.core.tyre.judge.SidewallSaid.Ground;
import cornerbook.core.tyre.judge.SidewallSaid.Label;
import java.util.ArrayList;
import java.util.Map;

/** Findings on wheels that do not belong on this car's hubs; none where a wheel's or the car's mounting is not known. */
public final class WheelFitFindings {
    private WheelFitFindings() {}

    public static Judgement judge(Case given) {
        var car = given.vehicle().details().mounting();
        var findings = new ArrayList<Finding>();
        if (car == null) {
            return Judgement.NONE;
        }
        for (var set : given.history().sets()) {
            for (var wheel : set.wheels()) {
                var mounting = wheel.details().mounting();
                var corner = given.visit().leftOn().entrySet().stream()
                        .filter(entry -> entry.getValue().equals(wheel.tag()))
                        .map(Map.Entry::getKey)
                        .findFirst();
                if (corner.isPresent() && mounting != null) {
                    var fit = SetFit.of(car, mounting);
                    if (!fit.mounts() || car.seat() != mounting.seat()) {
                        findings.add(finding(corner.get(), wheel.tag(), fit));
                    }
                }
            }
        }
        return Judgement.of(findings);
    }

    /** A wheel that cannot seat or is held by fasteners of another seat can come off. */
    private static Finding finding(Corner corner, String tag, SetFit fit) {
        return new Finding(
                        new Subject(Subject.Part.WHEEL_FIT, corner, tag, null),
                        fit.mounts() ? Verdict.SPENT : Verdict.UNSAFE,
                        new SidewallSaid.DoesNotFit(corner, tag, fit.cautions().getFirst()),
                        fit.mounts() ? new SidewallSaid.NeedsFasteners(corner) : new SidewallSaid.DoesNotBelong(corner),
                        null,
                        null,
                        0,
                        fit.cautions().stream()
                                .map(caution -> new Evidence(Label.HUB_AND_WHEEL, caution, Ground.AS_ENTERED))
                                .toList(),
                        Ground.MANUFACTURER_OUTRANKS)
                .todo(Todo.Action.FIT_ANOTHER_WHEEL);
    }
}
