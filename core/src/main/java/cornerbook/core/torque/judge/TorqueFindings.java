package cornerbook.core.torque.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import cornerbook.core.torque.ScrewThread;
import cornerbook.core.torque.ShortForm;
import cornerbook.core.torque.ThreadState;
import cornerbook.core.torque.TorqueSaid;
import cornerbook.core.torque.TorqueSaid.Label;
import cornerbook.core.torque.WheelFastener;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Findings on the wheel fasteners: torque recorded against the manufacturer's. A wrench in order may be 4 % off (ISO 6789, as a
 * wrench maker's manual has it); what lies farther off but near a limit says so, and what to do.
 */
public final class TorqueFindings {
    /** Shares of the manufacturer's torque between which a recorded torque stands. Common practice, no source. */
    private static final double LOW = 0.95;

    private static final double HIGH = 1.10;
    /** Below this share a wheel is called loose; between it and {@code LOW} it was tightened, but not enough. Common practice, no source. */
    private static final double LOOSE = 0.90;

    /** What a wrench of more than 10 N·m may be off: ISO 6789, type II class A, quoted in a wrench maker's manual. */
    private static final double WRENCH_SHARE = 0.04;

    private static final double N_PER_KN = 1000;

    private TorqueFindings() {}

    public static Judgement judge(Case given) {
        var visit = given.visit();
        var fastener = given.vehicle().fastener();
        var findings = new ArrayList<Finding>();
        var notJudged = new ArrayList<Said>();
        var ticked = new ArrayList<Corner>();
        for (var corner : Corner.values()) {
            var tag = visit.leftOn().get(corner);
            if (tag == null) {
                continue;
            }
            var torque = given.readings().ofWheel(Measure.WHEEL_TORQUE, tag);
            if (torque.isPresent()) {
                if (fastener != null) {
                    findings.add(finding(corner, tag, torque.get(), fastener));
                }
            } else if (visit.tightened().contains(corner)) {
                ticked.add(corner);
            } else if (!tag.equals(visit.arrivedOn().get(corner))) {
                notJudged.add(new TorqueSaid.NotRecorded(corner, tag));
            }
        }
        if (!ticked.isEmpty()) {
            notJudged.add(new TorqueSaid.Ticked(ticked.size(), ticked));
        }
        return new Judgement(findings, notJudged);
    }

    /** Between what torques each wheel of a car stands, whichever wheel it is. */
    public static List<ReadingLimit> limits(Case given) {
        var fastener = given.vehicle().fastener();
        return fastener == null
                ? List.of()
                : Arrays.stream(Corner.values())
                        .flatMap(corner -> limits(corner, fastener).stream())
                        .toList();
    }

    private static List<ReadingLimit> limits(Corner corner, WheelFastener fastener) {
        var measure = Measure.WHEEL_TORQUE;
        var subject = new Subject(Subject.Part.WHEEL_TORQUE, corner, null, null);
        var asked = Amount.of(fastener.torqueNm(), "N·m");
        return List.of(
                ReadingLimit.atLeast(
                        LOW * fastener.torqueNm(),
                        measure,
                        subject,
                        Verdict.UNSAFE,
                        new TorqueSaid.TightenOn(asked),
                        Label.TORQUE_SOURCE,
                        null),
                new ReadingLimit(
                        measure,
                        subject,
                        measure.lowest(),
                        HIGH * fastener.torqueNm(),
                        Verdict.SPENT,
                        new TorqueSaid.LoosenFirst(asked),
                        Label.TORQUE_SOURCE,
                        null));
    }

    private static Finding finding(Corner corner, String tag, Reading torque, WheelFastener fastener) {
        double share = torque.value() / fastener.torqueNm();
        var verdict = ReadingLimit.broken(limits(corner, fastener), torque.value())
                .map(ReadingLimit::outside)
                .orElse(Verdict.HOLDS);
        var finding = new Finding(
                        new Subject(Subject.Part.WHEEL_TORQUE, corner, tag, null),
                        verdict,
                        new TorqueSaid.Recorded(
                                corner, Amount.of(torque.value(), "N·m"), Amount.of(fastener.torqueNm(), "N·m")),
                        plainWords(corner, share, verdict, fastener),
                        null,
                        null,
                        verdict == Verdict.HOLDS ? 1 : 0,
                        evidence(torque, fastener),
                        Label.TORQUE_SOURCE)
                .todo(Todo.Action.TORQUE_AGAIN)
                .beforeLeaving();
        return verdict == Verdict.HOLDS && Math.abs(share - 1) > WRENCH_SHARE
                ? finding.todo(Todo.Action.TORQUE_AGAIN, share < 1 ? Todo.When.NOW : Todo.When.AT_RETORQUE)
                : finding;
    }

    private static Said plainWords(Corner corner, double share, Verdict verdict, WheelFastener fastener) {
        if (share < LOOSE) {
            return new TorqueSaid.NotTight(corner);
        }
        var off = new Amount(Math.abs(share - 1) * fastener.torqueNm(), "N·m", 0);
        var percent = Amount.significant(Math.abs(share - 1) * 100, "%", 2);
        var asked = Amount.of(fastener.torqueNm(), "N·m");
        return switch (verdict) {
            case UNSAFE -> new TorqueSaid.UnderTorque(corner, off, percent, asked);
            case SPENT -> new TorqueSaid.TooTight(corner, off, percent, asked);
            default ->
                Math.abs(share - 1) <= WRENCH_SHARE
                        ? new TorqueSaid.AtTorque(corner)
                        : new TorqueSaid.NearTorque(corner, off, percent, share < 1, asked);
        };
    }

    private static List<Evidence> evidence(Reading torque, WheelFastener fastener) {
        var evidence = new ArrayList<Evidence>(List.of(
                new Evidence(Label.RECORDED, Amount.of(torque.value(), "N·m"), Evidence.howRead(torque)),
                new Evidence(
                        Label.ASKED,
                        new TorqueSaid.AskedFor(
                                Amount.of(fastener.torqueNm(), "N·m"), fastener.thread(), fastener.count()),
                        Label.SPECIFICATION_CLEAN),
                new Evidence(
                        Label.WRENCH_ACCURACY,
                        new Between(
                                fastener.torqueNm() * (1 - WRENCH_SHARE),
                                fastener.torqueNm() * (1 + WRENCH_SHARE),
                                "N·m",
                                0),
                        Label.WRENCH_ACCURACY_SOURCE),
                new Evidence(Label.RETORQUE_AFTER, Amount.of(fastener.retorqueAfterKm(), "km"), Label.SPECIFICATION)));
        clampLoad(torque, fastener).ifPresent(evidence::add);
        evidence.add(new Evidence(
                Label.LUBRICATED, new TorqueSaid.ClampsBetween(new Between(25, 67, "%", 0)), Label.LUBRICATED_SOURCE));
        return evidence;
    }

    /** Information only: the manufacturer's torque outranks it. Empty for a thread that is not read, or hardly a torque. */
    private static Optional<Evidence> clampLoad(Reading torque, WheelFastener fastener) {
        try {
            var thread = ScrewThread.parse(fastener.thread());
            double leastN = ShortForm.clampLoadN(torque.value(), ThreadState.DRY.highestFactor(), thread.diameterMm());
            double mostN = ShortForm.clampLoadN(torque.value(), ThreadState.DRY.lowestFactor(), thread.diameterMm());
            return Optional.of(new Evidence(
                    Label.CLAMP_LOAD_DRY,
                    new Between(leastN / N_PER_KN, mostN / N_PER_KN, "kN", 0),
                    Label.CLAMP_LOAD_SOURCE));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
