package cornerbook.core.torque.judge;

import cornerbook.core.say.Said;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.torque.ScrewThread;
import cornerbook.core.torque.ShortForm;
import cornerbook.core.torque.ThreadState;
import cornerbook.core.torque.WheelFastener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Findings on the wheel fasteners: torque recorded against the manufacturer's. */
public final class TorqueFindings {
    /** Shares of the manufacturer's torque between which a recorded torque stands. Common practice, no source. */
    private static final double LOW = 0.95;

    private static final double HIGH = 1.10;
    private static final double N_PER_KN = 1000;

    private TorqueFindings() {}

    public static List<Finding> of(Vehicle vehicle, Visit visit, StandingReadings readings, List<Said> notJudged) {
        var findings = new ArrayList<Finding>();
        var ticked = new ArrayList<String>();
        for (var corner : Corner.values()) {
            var tag = visit.leftOn().get(corner);
            if (tag == null) {
                continue;
            }
            var torque = readings.ofWheel(Measure.WHEEL_TORQUE, tag);
            if (torque.isPresent()) {
                findings.add(finding(corner, tag, torque.get(), vehicle.fastener()));
            } else if (visit.tightened().contains(corner)) {
                ticked.add(corner.name());
            } else if (!tag.equals(visit.arrivedOn().get(corner))) {
                notJudged.add(Said.verbatim("%s wheel torque: %s went on and no torque is recorded; it must be before the car moves"
                        .formatted(corner, tag)));
            }
        }
        if (!ticked.isEmpty()) {
            notJudged.add(Said.verbatim("wheel torque: %d %s ticked as tightened (%s), no torque value read"
                    .formatted(ticked.size(), ticked.size() == 1 ? "wheel" : "wheels", String.join(", ", ticked))));
        }
        return findings;
    }

    private static Finding finding(Corner corner, String tag, Reading torque, WheelFastener fastener) {
        double share = torque.value() / fastener.torqueNm();
        var verdict = share < LOW ? Verdict.UNSAFE : share > HIGH ? Verdict.SPENT : Verdict.HOLDS;
        var plain = switch (verdict) {
            case UNSAFE -> "The wheel at %s is not tight. The car must not be driven until it is.";
            case SPENT -> "The wheel at %s was tightened too far. Its fasteners have to be checked and tightened anew.";
            default -> "The wheel at %s is tightened to the manufacturer's torque.";
        };
        return new Finding(
                new Subject(Subject.Part.WHEEL_TORQUE, corner, tag, null),
                verdict,
                "%s wheel torque %.0f N·m, manufacturer %.0f N·m"
                        .formatted(corner, torque.value(), fastener.torqueNm()),
                plain.formatted(corner),
                null,
                null,
                verdict == Verdict.HOLDS ? 1 : 0,
                evidence(torque, fastener),
                "vehicle manufacturer's torque; band 95 to 110 % common practice, no source");
    }

    private static List<Evidence> evidence(Reading torque, WheelFastener fastener) {
        var evidence = new ArrayList<Evidence>(List.of(
                new Evidence("recorded", "%.0f N·m".formatted(torque.value()), Evidence.howRead(torque)),
                new Evidence(
                        "asked",
                        "%.0f N·m, %s, %d per wheel"
                                .formatted(fastener.torqueNm(), fastener.thread(), fastener.count()),
                        "vehicle's specification, for clean and dry threads"),
                new Evidence(
                        "re-torque after",
                        "%.0f km".formatted(fastener.retorqueAfterKm()),
                        "vehicle's specification")));
        clampLoad(torque, fastener).ifPresent(evidence::add);
        evidence.add(
                new Evidence(
                        "on a lubricated thread",
                        "the same torque clamps 25 to 67 % more",
                        "T = K F d, handbook values of K: oiled, anti-seize against dry; do not lubricate unless the vehicle's manual says so"));
        return evidence;
    }

    /** Information only: the manufacturer's torque outranks it. Empty for a thread that is not read, or hardly a torque. */
    private static Optional<Evidence> clampLoad(Reading torque, WheelFastener fastener) {
        try {
            var thread = ScrewThread.parse(fastener.thread());
            double leastN = ShortForm.clampLoadN(torque.value(), ThreadState.DRY.highestFactor(), thread.diameterMm());
            double mostN = ShortForm.clampLoadN(torque.value(), ThreadState.DRY.lowestFactor(), thread.diameterMm());
            return Optional.of(new Evidence(
                    "clamp load, dry thread",
                    "%.0f to %.0f kN".formatted(leastN / N_PER_KN, mostN / N_PER_KN),
                    "T = K F d, K = 0.20 to 0.25; information only, the manufacturer's torque outranks it"));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
