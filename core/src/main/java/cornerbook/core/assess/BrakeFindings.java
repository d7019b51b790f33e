package cornerbook.core.assess;

import cornerbook.core.brake.caliper.CaliperFindings;
import cornerbook.core.brake.caliper.PadMovementFindings;
import cornerbook.core.brake.disc.judge.DiscFindings;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakePairFindings;
import cornerbook.core.brake.judge.BrakeReadingRules;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.pads.judge.EdgeLiftFindings;
import cornerbook.core.brake.pads.judge.PadFindings;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import java.util.ArrayList;
import java.util.stream.Stream;

/** Findings on the brakes of one visit: pads, discs and calipers corner by corner, then what an axle needs as a pair. */
public final class BrakeFindings {
    private BrakeFindings() {}

    public static Judgement judge(Case given) {
        var wear = new BrakeWear(given.vehicle(), given.visits(), given.distance());
        var notJudged = new ArrayList<>(BrakeReadingRules.notUsed(given.vehicle(), given.readings()));
        var findings = new ArrayList<Finding>();
        var worn = new ArrayList<Finding>();
        for (var corner : Corner.values()) {
            var at = new BrakeCorner(corner, given.vehicle(), given.readings());
            var pads = PadFindings.judge(given, at, wear);
            var lift = EdgeLiftFindings.of(at).stream().toList();
            var disc = DiscFindings.judge(given, at, wear);
            findings.addAll(pads.findings());
            PadMovementFindings.of(at, given.nextVisit()).ifPresent(findings::add);
            findings.addAll(lift);
            CaliperFindings.of(at).ifPresent(findings::add);
            findings.addAll(disc.findings());
            Stream.of(pads.findings(), lift, disc.findings()).forEach(worn::addAll);
            notJudged.addAll(pads.notJudged());
            notJudged.addAll(disc.notJudged());
        }
        findings.addAll(BrakePairFindings.of(given, worn));
        return new Judgement(findings, notJudged);
    }
}
