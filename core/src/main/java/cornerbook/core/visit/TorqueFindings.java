package cornerbook.core.visit;

import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.List;

/** Findings on the wheel fasteners: torque recorded against the manufacturer's. */
final class TorqueFindings {
    /** Shares of the manufacturer's torque between which a recorded torque stands. Common practice, no source. */
    private static final double LOW = 0.95;

    private static final double HIGH = 1.10;

    private TorqueFindings() {}

    static List<Finding> of(Vehicle vehicle, Visit visit, CurrentReadings readings, List<String> notJudged) {
        var findings = new ArrayList<Finding>();
        for (var corner : Corner.values()) {
            var tag = visit.leftOn().get(corner);
            if (tag == null) {
                continue;
            }
            var torque = readings.ofWheel(Measure.WHEEL_TORQUE, tag);
            if (torque.isPresent()) {
                findings.add(finding(corner, tag, torque.get(), vehicle.fastener()));
            } else if (!tag.equals(visit.arrivedOn().get(corner))) {
                notJudged.add("%s wheel torque: %s went on and no torque is recorded; it must be before the car moves"
                        .formatted(corner, tag));
            }
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
                List.of(
                        new Evidence(
                                "recorded",
                                "%.0f N·m".formatted(torque.value()),
                                "reading, written \"" + torque.asWritten() + "\""),
                        new Evidence(
                                "asked",
                                "%.0f N·m, %s, %d per wheel"
                                        .formatted(fastener.torqueNm(), fastener.thread(), fastener.count()),
                                "vehicle's specification, for clean and dry threads"),
                        new Evidence(
                                "re-torque after",
                                "%.0f km".formatted(fastener.retorqueAfterKm()),
                                "vehicle's specification")),
                "vehicle manufacturer's torque; band 95 to 110 % common practice, no source");
    }
}
