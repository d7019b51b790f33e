package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.torque.TorqueSaid.Label;
import cornerbook.core.torque.TorqueSaid.Part;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
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
        Explanation explanation)
        implements Explained {
    private static final double MM_PER_M = 1000;
    private static final double N_PER_KN = 1000;

    /** The clamp load of a fastener tightened to {@code torqueNm}, 1 to 1000 N·m. */
    public static ClampLoad of(
            ScrewThread thread, PropertyClass strength, SeatFace seat, FrictionBand friction, double torqueNm) {
        check(Part.TORQUE, torqueNm, 1, 1000, "N·m");
        double leastN = torqueNm * MM_PER_M / Tightening.torquePerLoadMm(thread, seat, friction.highest());
        double mostN = torqueNm * MM_PER_M / Tightening.torquePerLoadMm(thread, seat, friction.lowest());
        double proofN = strength.proofLoadN(thread);
        double yieldNm = Tightening.assemblyPreloadN(thread, strength, friction.lowest())
                * Tightening.torquePerLoadMm(thread, seat, friction.lowest())
                / MM_PER_M;
        var cautions = new ArrayList<Said>();
        if (mostN > proofN) {
            cautions.add(new TorqueSaid.PassesProofLoad(thread.toString(), strength.told()));
        } else if (torqueNm > yieldNm) {
            cautions.add(new TorqueSaid.PassesYield(thread.toString(), strength.told()));
        }
        var steps = List.of(
                new Step(
                        new TorqueSaid.PitchDiameter(thread.toString()),
                        Said.verbatim("d − 0.6495 P"),
                        thread.pitchDiameterMm(),
                        "mm",
                        Label.PITCH_SOURCE),
                new Step(
                        Label.STRESS_AREA,
                        Formula.of(
                                thread.stressAreaFormula() + ", d3 = {}, P = {}",
                                Amount.significant(thread.minorDiameterMm(), "mm", 4),
                                Amount.significant(thread.pitchMm(), "mm", 4)),
                        thread.stressAreaMm2(),
                        "mm²",
                        thread.stressAreaSource()),
                new Step(
                        new TorqueSaid.ProofLoad(strength.told()),
                        Formula.of("Sp As, Sp = {}", Amount.significant(strength.proofStressMpa(thread), "MPa", 4)),
                        proofN / N_PER_KN,
                        "kN",
                        strength.source()),
                load(Label.LEAST_CLAMP_LOAD, torqueNm, seat, friction.highest(), leastN),
                load(Label.MOST_CLAMP_LOAD, torqueNm, seat, friction.lowest(), mostN),
                new Step(
                        Label.TORQUE_AT_YIELD,
                        Formula.of(
                                "FM (P/2π + 0.577 d2 µ + Dm/2 µ g), FM = 0.9 Rp As/√(1 + 3 (1.5 d2/ds tan(φ+ρ'))²), µ = {}",
                                Amount.significant(friction.lowest(), "", 4)),
                        yieldNm,
                        "N·m",
                        Label.VDI_SECTION));
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
                new Explanation(cautions, steps));
    }

    private static Step load(Said what, double torqueNm, SeatFace seat, double friction, double loadN) {
        return new Step(
                what,
                Formula.of(
                        "T / (P/2π + 0.577 d2 µ + Dm/2 µ g), T = {}, µ = {}, Dm = {}, g = {}",
                        Amount.significant(torqueNm, "N·m", 4),
                        Amount.significant(friction, "", 4),
                        Amount.significant(seat.meanDiameterMm(), "mm", 4),
                        Amount.significant(seat.grip(), "", 4)),
                loadN / N_PER_KN,
                "kN",
                Label.THREAD_FORMULA_SOURCE);
    }
}
