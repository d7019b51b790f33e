package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A screw thread of 60 degrees, basic profile: pitch diameter d2 = d − 3/8 √3 P. ISO metric (ISO 68-1, ISO 724; from memory): minor
 * diameter of the bolt d3 = d − 17/24 √3 P, stress area As = π/4 ((d2 + d3)/2)² (ISO 898-1, clause from memory). Unified inch
 * (ASME B1.1): d3 = d − 11/16 √3 P (rounded root), As = 0.7854 (d − 0.9743 P)². Exact for the basic profile; tolerances and
 * plating take up to about 2 % of the area.
 *
 * @param diameterMm d, 5 to 39 mm
 * @param pitchMm P, 0.5 to 4 mm and less than a fifth of d
 */
public record ScrewThread(double diameterMm, double pitchMm, Standard standard) {
    /** Whose profile it has. */
    public enum Standard {
        METRIC,
        UNIFIED
    }

    private static final Pattern METRIC =
            Pattern.compile("M\\s*(\\d+(?:[.,]\\d+)?)(?:\\s*[X×*-]\\s*(\\d(?:[.,]\\d+)?))?");
    private static final Pattern UNIFIED =
            Pattern.compile("(\\d{1,2})/(\\d{1,2})(?:\\s*(?:IN|\"|″))?\\s*[-X×–]\\s*(\\d{1,2})(?:\\s*UN[FCR]*)?");
    private static final double INCH_MM = 25.4;
    private static final double SIXTY_FOURTHS = 64;
    private static final double UNIFIED_STRESS_PITCHES = 0.9743;

    /** Coarse pitch by diameter, mm (ISO 261, from memory). */
    private static final Map<Double, Double> COARSE_MM = Map.ofEntries(
            Map.entry(5.0, 0.8),
            Map.entry(6.0, 1.0),
            Map.entry(8.0, 1.25),
            Map.entry(10.0, 1.5),
            Map.entry(12.0, 1.75),
            Map.entry(14.0, 2.0),
            Map.entry(16.0, 2.0),
            Map.entry(18.0, 2.5),
            Map.entry(20.0, 2.5),
            Map.entry(22.0, 2.5),
            Map.entry(24.0, 3.0),
            Map.entry(27.0, 3.0),
            Map.entry(30.0, 3.5),
            Map.entry(33.0, 3.5),
            Map.entry(36.0, 4.0),
            Map.entry(39.0, 4.0));

    /** An ISO metric thread. */
    public ScrewThread(double diameterMm, double pitchMm) {
        this(diameterMm, pitchMm, Standard.METRIC);
    }

    public ScrewThread {
        check(TorqueSaid.Part.THREAD_DIAMETER, diameterMm, 5, 39, "mm");
        check(TorqueSaid.Part.THREAD_PITCH, pitchMm, 0.5, Math.min(4, diameterMm / 5), "mm");
    }

    /**
     * The thread as written: "M14×1.5", "m14 x 1,5", or "M12", which has the coarse pitch; "1/2-20 UNF" or "1/2-20", diameter in
     * inches and threads per inch.
     *
     * @throws IllegalArgumentException with one sentence that names the part
     */
    public static ScrewThread parse(String text) {
        var written = text.strip().toUpperCase(Locale.ROOT);
        var unified = UNIFIED.matcher(written);
        if (unified.matches()) {
            double threadsPerInch = number(unified.group(3));
            if (threadsPerInch == 0 || number(unified.group(2)) == 0) {
                throw new Refused(new TorqueSaid.NoInchThread(Quoted.of(text)));
            }
            return new ScrewThread(
                    number(unified.group(1)) / number(unified.group(2)) * INCH_MM,
                    INCH_MM / threadsPerInch,
                    Standard.UNIFIED);
        }
        var match = METRIC.matcher(written);
        if (!match.matches()) {
            throw new Refused(new TorqueSaid.NoThread(Quoted.of(text)));
        }
        double diameterMm = number(match.group(1));
        if (match.group(2) != null) {
            return new ScrewThread(diameterMm, number(match.group(2)));
        }
        var coarse = COARSE_MM.get(diameterMm);
        if (coarse == null) {
            throw new Refused(new TorqueSaid.NoCoarsePitch(Quoted.of(text)));
        }
        return new ScrewThread(diameterMm, coarse);
    }

    /** d2, mm. */
    public double pitchDiameterMm() {
        return diameterMm - 3 * Math.sqrt(3) / 8 * pitchMm;
    }

    /** d3: at the root of the bolt's thread, mm. */
    public double minorDiameterMm() {
        double pitches = standard == Standard.METRIC ? 17 * Math.sqrt(3) / 24 : 11 * Math.sqrt(3) / 16;
        return diameterMm - pitches * pitchMm;
    }

    /** Diameter of the circle that has the stress area, mm. */
    public double stressDiameterMm() {
        return standard == Standard.METRIC
                ? (pitchDiameterMm() + minorDiameterMm()) / 2
                : diameterMm - UNIFIED_STRESS_PITCHES * pitchMm;
    }

    /** As, mm². */
    public double stressAreaMm2() {
        return Math.PI / 4 * stressDiameterMm() * stressDiameterMm();
    }

    @Override
    public String toString() {
        return standard == Standard.METRIC
                ? "M%s×%s".formatted(plain(diameterMm), plain(pitchMm))
                : "%s-%s".formatted(fraction(diameterMm / INCH_MM), Math.round(INCH_MM / pitchMm));
    }

    /** Of an inch, in the largest parts that give it. */
    private static String fraction(double inches) {
        long top = Math.round(inches * SIXTY_FOURTHS);
        long bottom = (long) SIXTY_FOURTHS;
        while (top % 2 == 0 && bottom > 1) {
            top /= 2;
            bottom /= 2;
        }
        return top + "/" + bottom;
    }

    /** The formula of the stress area, for people, and its source. */
    String stressAreaFormula() {
        return standard == Standard.METRIC ? "π/4 ((d2 + d3)/2)²" : "0.7854 (d − 0.9743 P)²";
    }

    Said stressAreaSource() {
        return standard == Standard.METRIC ? TorqueSaid.Label.METRIC_AREA_SOURCE : TorqueSaid.Label.UNIFIED_AREA_SOURCE;
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
