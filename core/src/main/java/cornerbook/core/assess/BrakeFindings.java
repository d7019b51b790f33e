package cornerbook.core.assess;

import cornerbook.core.brake.caliper.CaliperFindings;
import cornerbook.core.brake.caliper.PadMovementFindings;
import cornerbook.core.brake.disc.judge.DiscFindings;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakePairFindings;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.pads.judge.EdgeLiftFindings;
import cornerbook.core.brake.pads.judge.PadFindings;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.say.Said;
import cornerbook.core.season.DistancePerDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Findings on the brakes of one visit: pads, discs and calipers corner by corner, then what an axle needs as a pair. */
public final class BrakeFindings {
    private BrakeFindings() {}

    /**
     * The findings.
     *
     * @param visits earliest first, the one that is judged last
     * @param distance to come
     */
    public static List<Finding> of(
            Vehicle vehicle,
            List<Visit> visits,
            DistancePerDay distance,
            LocalDate nextVisit,
            LimitTable limits,
            List<Said> notJudged) {
        var readings = new StandingReadings(visits.getLast());
        var legal = limits.get(vehicle.jurisdiction(), Limit.Kind.PAD_LEGAL, null);
        var wear = new BrakeWear(vehicle, visits, distance);
        var findings = new ArrayList<Finding>();
        var worn = new ArrayList<Finding>();
        for (var corner : Corner.values()) {
            var at = new BrakeCorner(corner, vehicle, readings);
            var pads = PadFindings.of(at, wear, legal, nextVisit, notJudged);
            var lift = EdgeLiftFindings.of(at);
            var disc = DiscFindings.of(at, wear, nextVisit, notJudged);
            Stream.of(pads, PadMovementFindings.of(at, nextVisit), lift, CaliperFindings.of(at), disc)
                    .flatMap(Optional::stream)
                    .forEach(findings::add);
            Stream.of(pads, lift, disc).flatMap(Optional::stream).forEach(worn::add);
        }
        findings.addAll(BrakePairFindings.of(vehicle, readings, worn));
        return findings;
    }
}
