package cornerbook.core.fastener;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Property class of a steel bolt or stud: proof stress and least yield stress, MPa, up to 16 mm and above (ISO 898-1,
 * table numbers from memory). A nut of the same first number is at least as strong (ISO 898-2).
 */
public enum PropertyClass {
    CLASS_8_8("8.8", 580, 600, 640, 660),
    CLASS_10_9("10.9", 830, 830, 940, 940),
    CLASS_12_9("12.9", 970, 970, 1100, 1100);

    private static final double THICKER_ABOVE_MM = 16;

    private final String written;
    private final double proofStressMpa;
    private final double proofStressThickerMpa;
    private final double yieldStressMpa;
    private final double yieldStressThickerMpa;

    PropertyClass(String written, double proof, double proofThicker, double yield, double yieldThicker) {
        this.written = written;
        proofStressMpa = proof;
        proofStressThickerMpa = proofThicker;
        yieldStressMpa = yield;
        yieldStressThickerMpa = yieldThicker;
    }

    /**
     * The class as on the bolt's head: "10.9".
     *
     * @throws IllegalArgumentException with one sentence when it is not one of these
     */
    public static PropertyClass parse(String text) {
        return Arrays.stream(values())
                .filter(each -> each.written.equals(text.strip().replace(',', '.')))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("property class is \"%s\", expected one of %s"
                        .formatted(
                                text,
                                Arrays.stream(values())
                                        .map(PropertyClass::toString)
                                        .collect(Collectors.joining(" ")))));
    }

    /** Sp, MPa: no lasting stretch up to here. */
    public double proofStressMpa(MetricThread thread) {
        return thread.diameterMm() > THICKER_ABOVE_MM ? proofStressThickerMpa : proofStressMpa;
    }

    /** Rp0.2, MPa, the least. */
    public double yieldStressMpa(MetricThread thread) {
        return thread.diameterMm() > THICKER_ABOVE_MM ? yieldStressThickerMpa : yieldStressMpa;
    }

    /** Fp = Sp As, N. */
    public double proofLoadN(MetricThread thread) {
        return proofStressMpa(thread) * thread.stressAreaMm2();
    }

    @Override
    public String toString() {
        return written;
    }
}
