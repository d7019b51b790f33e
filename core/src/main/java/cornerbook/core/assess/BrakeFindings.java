package cornerbook.core.assess;

import cornerbook.core.say.Said;

import cornerbook.core.brake.caliper.CaliperFindings;
import cornerbook.core.brake.disc.judge.DiscFindings;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakePairFindings;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.pads.judge.PadFindings;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.DistancePerDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Findings on the brakes of one visit: pads, discs and calipers corner by corner, then what an axle needs as a pair. */
public final class BrakeFindings {
    private static final int TIGHT = 1;
    private static final int SEIZED = 2;

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
        for (var corner : Corner.values()) {
            var at = new BrakeCorner(corner, vehicle, readings);
            PadFindings.of(at, wear, legal, nextVisit, notJudged).ifPresent(findings::add);
            movement(at, nextVisit).ifPresent(findings::add);
            edgeLift(at).ifPresent(findings::add);
            CaliperFindings.of(at).ifPresent(findings::add);
            DiscFindings.of(at, wear, nextVisit, notJudged).ifPresent(findings::add);
        }
        findings.addAll(BrakePairFindings.of(vehicle, readings, findings));
        return findings;
    }

    private static Optional<Finding> movement(BrakeCorner at, LocalDate nextVisit) {
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
        var found = seized ? "seized" : "tight";
        return new Finding(
                new Subject(Subject.Part.PAD, at.corner(), null, null),
                seized && !freed ? Verdict.SPENT : Verdict.RUNS_OUT,
                "%s %s pad %s in its bracket as found%s"
                        .formatted(at.corner(), BrakeCorner.side(worst), found, freed ? ", free after service" : ""),
                (seized
                                ? freed
                                        ? "A brake pad at %s was seized and did not work. It was freed at this visit; it has to be looked at again at the next."
                                        : "A brake pad at %s was seized and did not work. It has to be freed, cleaned and lubricated."
                                : freed
                                        ? "A brake pad at %s moved only with force. It was freed at this visit; look again at the next."
                                        : "A brake pad at %s moved only with force. Clean and lubricate it before it seizes.")
                        .formatted(at.corner()),
                freed ? nextVisit : null,
                null,
                freed ? 1 : seized ? 0 : 0.5,
                List.of(new Evidence(
                        "by hand, %s pad".formatted(BrakeCorner.side(worst)), found, Evidence.howRead(worst))),
                "yearly cleaning and lubrication where roads are salted: manufacturers' service advice; judgement by hand: common practice, no source");
    }

    /** Rust under the friction material lifts it: it is rejected whatever its thickness. */
    private static Optional<Finding> edgeLift(BrakeCorner at) {
        return at.worst(Measure.PAD_EDGE_LIFT)
                .filter(lift -> Math.round(lift.value()) > 0 && !at.done(Measure.PADS_REPLACED))
                .map(lift -> new Finding(
                        new Subject(Subject.Part.PAD, at.corner(), null, null),
                        Verdict.SPENT,
                        "%s %s pad: friction material lifts off its plate"
                                .formatted(at.corner(), BrakeCorner.side(lift)),
                        "The friction material of a brake pad at %s comes off its plate. The pads have to be replaced now, however thick they are."
                                .formatted(at.corner()),
                        null,
                        null,
                        0,
                        List.of(new Evidence(
                                "edge lift, %s pad".formatted(BrakeCorner.side(lift)),
                                Scale.AMOUNT.wordOf(lift.value()),
                                Evidence.howRead(lift))),
                        "service literature: reject on edge lift, not only on thickness"));
    }
}
