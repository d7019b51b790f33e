package cornerbook.core.torque;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final String SOURCE = "T = K F d; handbook values of K for %s threads";
    private static final double N_PER_KN = 1000;

    public ShortForm {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** F = T / (K d), N. */
    public static double clampLoadN(double torqueNm, double factor, double diameterMm) {
        return torqueNm * 1000 / (factor * diameterMm);
    }

    /** The clamp load at {@code torqueNm}, 1 to 1000 N·m, with this on the thread. */
    public static ShortForm of(ScrewThread thread, PropertyClass strength, ThreadState state, double torqueNm) {
        check("torque", torqueNm, 1, 1000, "N·m");
        double leastN = clampLoadN(torqueNm, state.highestFactor(), thread.diameterMm());
        double mostN = clampLoadN(torqueNm, state.lowestFactor(), thread.diameterMm());
        double proofN = strength.proofLoadN(thread);
        double low = ThreadState.DRY.highestFactor() / state.highestFactor();
        double high = ThreadState.DRY.lowestFactor() / state.lowestFactor();
        var cautions = new ArrayList<Said>();
        if (state != ThreadState.DRY) {
            cautions.add(Said.verbatim(
                    "A torque given for clean, dry threads clamps %.0f to %.0f %% more on %s threads; follow the vehicle's manual and do not lubricate unless it says so."
                            .formatted((Math.min(low, high) - 1) * 100, (Math.max(low, high) - 1) * 100, state.word())));
        }
        if (mostN > proofN) {
            cautions.add(Said.verbatim("This torque can pass the proof load of %s %s on %s threads."
                    .formatted(thread, strength.words(), state.word())));
        }
        var source = SOURCE.formatted(state.word());
        var steps = List.of(
                step("least clamp load, " + state.word(), torqueNm, state.highestFactor(), thread, source),
                step("most clamp load, " + state.word(), torqueNm, state.lowestFactor(), thread, source),
                new Step(
                        "proof load, " + strength.words(),
                        "Sp As, Sp = %s MPa, As = %s mm²"
                                .formatted(
                                        Step.digits(strength.proofStressMpa(thread)),
                                        Step.digits(thread.stressAreaMm2())),
                        proofN / N_PER_KN,
                        "kN",
                        strength.source()),
                new Step("most of the proof load", "F / Fp", mostN / proofN * 100, "%", strength.source()));
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
                cautions,
                steps);
    }

    private static Step step(String what, double torqueNm, double factor, ScrewThread thread, String source) {
        return new Step(
                what,
                "T / (K d), T = %s N·m, K = %s, d = %s mm"
                        .formatted(Step.digits(torqueNm), Step.digits(factor), Step.digits(thread.diameterMm())),
                clampLoadN(torqueNm, factor, thread.diameterMm()) / N_PER_KN,
                "kN",
                source);
    }
}
