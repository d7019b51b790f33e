package cornerbook.core.torque;

import cornerbook.core.say.Said;

import cornerbook.core.say.Refused;

import cornerbook.core.quantity.Quoted;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Strength of a steel bolt or stud: proof stress and least yield stress, MPa, up to a diameter and above it. Metric property
 * classes by ISO 898-1 (table numbers from memory), inch grades by SAE J429 as handbooks print it (85 and 120 ksi proof, 92 and
 * 130 ksi yield). A nut of the same first number is at least as strong (ISO 898-2).
 */
public enum PropertyClass {
    CLASS_8_8("8.8", 16, 580, 600, 640, 660),
    CLASS_10_9("10.9", 16, 830, 830, 940, 940),
    CLASS_12_9("12.9", 16, 970, 970, 1100, 1100),
    GRADE_5("grade 5", 25.4, 586, 510, 634, 558),
    GRADE_8("grade 8", 25.4, 827, 827, 896, 896);

    private final String written;
    private final double thickerAboveMm;
    private final double proofStressMpa;
    private final double proofStressThickerMpa;
    private final double yieldStressMpa;
    private final double yieldStressThickerMpa;

    PropertyClass(
            String written, double thickerAbove, double proof, double proofThicker, double yield, double yieldThicker) {
        this.written = written;
        thickerAboveMm = thickerAbove;
        proofStressMpa = proof;
        proofStressThickerMpa = proofThicker;
        yieldStressMpa = yield;
        yieldStressThickerMpa = yieldThicker;
    }

    /**
     * The class as on the bolt's head, "10.9", or an inch grade, "grade 8".
     *
     * @throws IllegalArgumentException with one sentence when it is not one of these
     */
    public static PropertyClass parse(String text) {
        return Arrays.stream(values())
                .filter(each -> each.written.equals(
                        text.strip().toLowerCase(Locale.ROOT).replace(',', '.')))
                .findFirst()
                .orElseThrow(() -> new Refused(new TorqueSaid.NoPropertyClass(
                        Quoted.of(text),
                        Arrays.stream(values())
                                .map(each -> Said.verbatim(each.written))
                                .toList())));
    }

    /** Sp, MPa: no lasting stretch up to here. */
    public double proofStressMpa(ScrewThread thread) {
        return thread.diameterMm() > thickerAboveMm ? proofStressThickerMpa : proofStressMpa;
    }

    /** Rp0.2, MPa, the least. */
    public double yieldStressMpa(ScrewThread thread) {
        return thread.diameterMm() > thickerAboveMm ? yieldStressThickerMpa : yieldStressMpa;
    }

    /** Fp = Sp As, N. */
    public double proofLoadN(ScrewThread thread) {
        return proofStressMpa(thread) * thread.stressAreaMm2();
    }

    /** For people: "class 10.9", "grade 8". */
    public TorqueSaid.Strength told() {
        return new TorqueSaid.Strength(written.replace("grade ", ""), isGrade());
    }

    private boolean isGrade() {
        return written.startsWith("grade");
    }

    /** Where its stresses come from. */
    Said source() {
        return isGrade() ? TorqueSaid.Label.GRADE_SOURCE : TorqueSaid.Label.CLASS_SOURCE;
    }

    @Override
    public String toString() {
        return written;
    }
}
