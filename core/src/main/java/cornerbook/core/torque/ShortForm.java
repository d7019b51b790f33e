package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Clamp load by the short form, F = T / (K d), and what the same torque gives on a dry thread. A rough guide: K hides
 * pitch, seat and coating; its band is the accuracy. It warns and never offers a corrected torque, because the vehicle
 * maker's torque holds for the state of thread that the maker names.
 *
 * @param leastGain least clamp load in this state over that on a dry thread, at the same place in the band
 * @param mostGain the most
 */
public record ShortForm(
        ScrewThread thread,
        PropertyClass strength,
        ThreadState state,
        double torqueNm,
        double leastN,
        double mostN,
        double leastGain,
        double mostGain,
        double mostShareOfProof,
        Explanation explanation)
        implements Explained {
    private static final double N_PER_KN = 1000;

    /** F = T / (K d), N. */
    public static double clampLoadN(double torqueNm, double factor, double diameterMm) {
        return torqueNm * 1000 / (factor * diameterMm);
    }

    /** The clamp load at {@code torqueNm}, 1 to 1000 N·m, with this on the thread. */
    public static ShortForm of(ScrewThread thread, PropertyClass strength, ThreadState state, double torqueNm) {
        check(TorqueSaid.Part.TORQUE, torqueNm, 1, 1000, "N·m");
        double leastN = clampLoadN(torqueNm, state.highestFactor(), thread.diameterMm());
        double mostN = clampLoadN(torqueNm, state.lowestFactor(), thread.diameterMm());
        double proofN = strength.proofLoadN(thread);
        double low = ThreadState.DRY.highestFactor() / state.highestFactor();
        double high = ThreadState.DRY.lowestFactor() / state.lowestFactor();
        var cautions = new ArrayList<Said>();
        if (state != ThreadState.DRY) {
            cautions.add(new TorqueSaid.ClampsMore(
                    new Amount((Math.min(low, high) - 1) * 100, "", 0),
                    new Amount((Math.max(low, high) - 1) * 100, "", 0),
                    state));
        }
        if (mostN > proofN) {
            cautions.add(new TorqueSaid.CanPassProofLoad(thread.toString(), strength.told(), state));
        }
        var source = new TorqueSaid.ShortFormSource(state);
        var steps = List.of(
                step(new TorqueSaid.LeastClampLoad(state), torqueNm, state.highestFactor(), thread, source),
                step(new TorqueSaid.MostClampLoad(state), torqueNm, state.lowestFactor(), thread, source),
                new Step(
                        new TorqueSaid.ProofLoad(strength.told()),
                        Formula.of(
                                "Sp As, Sp = {}, As = {}",
                                Amount.significant(strength.proofStressMpa(thread), "MPa", 4),
                                Amount.significant(thread.stressAreaMm2(), "mm²", 4)),
                        proofN / N_PER_KN,
                        "kN",
                        strength.source()),
                new Step(
                        TorqueSaid.Label.MOST_OF_PROOF_LOAD,
                        Said.verbatim("F / Fp"),
                        mostN / proofN * 100,
                        "%",
                        strength.source()));
        return new ShortForm(
                thread,
                strength,
                state,
                torqueNm,
                leastN,
                mostN,
                Math.min(low, high),
                Math.max(low, high),
                mostN / proofN,
                new Explanation(cautions, steps));
    }

    private static Step step(Said what, double torqueNm, double factor, ScrewThread thread, Said source) {
        return new Step(
                what,
                Formula.of(
                        "T / (K d), T = {}, K = {}, d = {}",
                        Amount.significant(torqueNm, "N·m", 4),
                        Amount.significant(factor, "", 4),
                        Amount.significant(thread.diameterMm(), "mm", 4)),
                clampLoadN(torqueNm, factor, thread.diameterMm()) / N_PER_KN,
                "kN",
                source);
    }
}
