package cornerbook.core.assess;

import cornerbook.core.brake.DiscBrake;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.UnknownBrake;
import cornerbook.core.brake.caliper.CaliperFindings;
import cornerbook.core.brake.caliper.PadMovementFindings;
import cornerbook.core.brake.disc.judge.DiscFindings;
import cornerbook.core.brake.drum.judge.DrumFindings;
import cornerbook.core.brake.drum.judge.ParkingShoeFindings;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakePairFindings;
import cornerbook.core.brake.judge.BrakeReadingRules;
import cornerbook.core.brake.judge.BrakeRelease;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.pads.judge.EdgeLiftFindings;
import cornerbook.core.brake.pads.judge.PadFindings;
import cornerbook.core.brake.pads.judge.PadsOfUnknownBrake;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Verdict;
import java.util.ArrayList;
import java.util.stream.Stream;

/**
 * Findings on the brakes of one visit: pads and discs, or shoes and drums, and what moves them, corner by corner, then what an axle needs as a pair, and what
 * several faults come to together.
 */
public final class BrakeFindings {
    private BrakeFindings() {}

    public static Judgement judge(Case given) {
        var wear = new BrakeWear(given);
        var notJudged = new ArrayList<>(BrakeReadingRules.notUsed(given.vehicle(), given.readings()));
        var findings = new ArrayList<Finding>();
        var worn = new ArrayList<Finding>();
        for (var corner : Corner.values()) {
            var at = new BrakeCorner(corner, given.vehicle(), given.readings());
            var parts = switch (at.brake().friction()) {
                case DrumBrake drum -> DrumFindings.judge(given, at, drum, wear);
                case DiscBrake disc -> ofDisc(given, at, wear);
                case UnknownBrake unknown -> PadsOfUnknownBrake.judge(given, at);
            };
            worn.addAll(parts.findings());
            findings.addAll(parts.findings());
            notJudged.addAll(parts.notJudged());
            PadMovementFindings.of(at, given.nextVisit()).ifPresent(findings::add);
            CaliperFindings.of(at).ifPresent(findings::add);
            CaliperFindings.ofParkingShoes(at).ifPresent(findings::add);
            BrakeRelease.of(at).ifPresent(findings::add);
        }
        findings.addAll(BrakePairFindings.of(given, worn));
        BrakesTogether.of(given, findings).ifPresent(findings::add);
        return new Judgement(findings, notJudged);
    }

    /** What wears at a disc. A pad whose lining comes off has material, and none that helps. */
    private static Judgement ofDisc(Case given, BrakeCorner at, BrakeWear wear) {
        var pads = PadFindings.judge(given, at, wear);
        var lifts = EdgeLiftFindings.of(at);
        var worn = new Judgement(
                pads.findings().stream()
                        .filter(finding -> lifts.isEmpty() || finding.verdict() != Verdict.HOLDS)
                        .toList(),
                pads.notJudged());
        return Judgement.together(Stream.of(
                worn,
                Judgement.of(lifts.stream().toList()),
                DiscFindings.judge(given, at, wear),
                ParkingShoeFindings.judge(at)));
    }
}
