package cornerbook.core.torque;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Clamp load of one fastener from its torque. T = F (P/2π + d2 µ/(2 cos 30°) + Dm/2 µ g), solved for F at both ends of the
 * friction band. Valid up to the proof load; friction in thread and seat taken as equal. The band of friction is the
 * accuracy: a torque wrench fixes torque, not clamp load. Sources: ISO 16047, VDI 2230, ISO 898-1.
 *
 * @param leastN at the highest friction
 * @param mostN at the lowest friction
 * @param leastShareOfProof of {@code leastN}; a reusable joint is meant to stand near 0.75 (Shigley)
 * @param mostShareOfProof above 1 the fastener may stretch for good
 * @param torqueAtYieldNm least torque at which tension and torsion reach 90 % of yield, at the lowest friction
 */
public record ClampLoad(
        ScrewThread thread,
        PropertyClass strength,
        SeatFace seat,
        FrictionBand friction,
        double torqueNm,
        double leastN,
        double mostN,
        double leastShareOfProof,
        double mostShareOfProof,
        double torqueAtYieldNm,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final double MM_PER_M = 1000;
    private static final double N_PER_KN = 1000;
    private static final String THREAD_SOURCE =
            "ISO 16047 and VDI 2230 (formula from memory, checked on VDI 2230's printed table); seat grip from equilibrium";

    public ClampLoad {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** The clamp load of a fastener tightened to {@code torqueNm}, 1 to 1000 N·m. */
    public static ClampLoad of(
            ScrewThread thread, PropertyClass strength, SeatFace seat, FrictionBand friction, double torqueNm) {
        check("torque", torqueNm, 1, 1000, "N·m");
        double leastN = torqueNm * MM_PER_M / Tightening.torquePerLoadMm(thread, seat, friction.highest());
        double mostN = torqueNm * MM_PER_M / Tightening.torquePerLoadMm(thread, seat, friction.lowest());
        double proofN = strength.proofLoadN(thread);
        double yieldNm = Tightening.assemblyPreloadN(thread, strength, friction.lowest())
                * Tightening.torquePerLoadMm(thread, seat, friction.lowest())
                / MM_PER_M;
        var cautions = new ArrayList<Said>();
        if (mostN > proofN) {
            cautions.add(Said.verbatim("With little friction this torque passes the proof load of %s %s: it may stretch for good."
                    .formatted(thread, strength.words())));
        } else if (torqueNm > yieldNm) {
            cautions.add(Said.verbatim("With little friction this torque turns %s %s past 90 %% of its yield."
                    .formatted(thread, strength.words())));
        }
        var steps = List.of(
                new Step(
                        "pitch diameter d2 of " + thread,
                        "d − 0.6495 P",
                        thread.pitchDiameterMm(),
                        "mm",
                        "ISO 724, ASME B1.1 (from memory)"),
                new Step(
                        "stress area As",
                        "%s, d3 = %s mm, P = %s mm"
                                .formatted(
                                        thread.stressAreaFormula(),
                                        Step.digits(thread.minorDiameterMm()),
                                        Step.digits(thread.pitchMm())),
                        thread.stressAreaMm2(),
                        "mm²",
                        thread.stressAreaSource()),
                new Step(
                        "proof load, " + strength.words(),
                        "Sp As, Sp = %s MPa".formatted(Step.digits(strength.proofStressMpa(thread))),
                        proofN / N_PER_KN,
                        "kN",
                        strength.source()),
                load("least clamp load", torqueNm, seat, friction.highest(), leastN),
                load("most clamp load", torqueNm, seat, friction.lowest(), mostN),
                new Step(
                        "torque at 90 % of yield",
                        "FM (P/2π + 0.577 d2 µ + Dm/2 µ g), FM = 0.9 Rp As/√(1 + 3 (1.5 d2/ds tan(φ+ρ'))²), µ = %s"
                                .formatted(Step.digits(friction.lowest())),
                        yieldNm,
                        "N·m",
                        "VDI 2230 (section from memory)"));
        return new ClampLoad(
                thread,
                strength,
                seat,
                friction,
                torqueNm,
                leastN,
                mostN,
                leastN / proofN,
                mostN / proofN,
                yieldNm,
                cautions,
                steps);
    }

    private static Step load(String what, double torqueNm, SeatFace seat, double friction, double loadN) {
        return new Step(
                what,
                "T / (P/2π + 0.577 d2 µ + Dm/2 µ g), T = %s N·m, µ = %s, Dm = %s mm, g = %s"
                        .formatted(
                                Step.digits(torqueNm),
                                Step.digits(friction),
                                Step.digits(seat.meanDiameterMm()),
                                Step.digits(seat.grip())),
                loadN / N_PER_KN,
                "kN",
                THREAD_SOURCE);
    }
}
