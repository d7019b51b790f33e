package cornerbook.core.fastener;

import static cornerbook.core.quantity.Range.check;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * ISO metric thread of the basic profile (ISO 68-1, ISO 724; from memory): pitch diameter d2 = d − 3/8 √3 P, minor diameter of the
 * bolt d3 = d − 17/24 √3 P, stress area As = π/4 ((d2 + d3)/2)² (ISO 898-1, clause from memory). Exact for the basic profile;
 * tolerances and plating take up to about 2 % of the area.
 *
 * @param diameterMm d, 5 to 39 mm
 * @param pitchMm P, 0.5 to 4 mm and less than a fifth of d
 */
public record MetricThread(double diameterMm, double pitchMm) {
    private static final Pattern WRITTEN =
            Pattern.compile("M\\s*(\\d+(?:[.,]\\d+)?)(?:\\s*[X×*-]\\s*(\\d(?:[.,]\\d+)?))?");

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

    public MetricThread {
        check("thread diameter", diameterMm, 5, 39, "mm");
        check("thread pitch", pitchMm, 0.5, Math.min(4, diameterMm / 5), "mm");
    }

    /**
     * The thread as written: "M14×1.5", "m14 x 1,5", or "M12", which has the coarse pitch.
     *
     * @throws IllegalArgumentException with one sentence that names the part
     */
    public static MetricThread parse(String text) {
        var match = WRITTEN.matcher(text.strip().toUpperCase(Locale.ROOT));
        if (!match.matches()) {
            throw new IllegalArgumentException(
                    "thread is \"%s\", expected a metric thread as M14×1.5".formatted(text.strip()));
        }
        double diameterMm = number(match.group(1));
        if (match.group(2) != null) {
            return new MetricThread(diameterMm, number(match.group(2)));
        }
        var coarse = COARSE_MM.get(diameterMm);
        if (coarse == null) {
            throw new IllegalArgumentException(
                    "thread \"%s\" has no coarse pitch here, expected its pitch as in M14×1.5".formatted(text.strip()));
        }
        return new MetricThread(diameterMm, coarse);
    }

    /** d2, mm. */
    public double pitchDiameterMm() {
        return diameterMm - 3 * Math.sqrt(3) / 8 * pitchMm;
    }

    /** d3: at the root of the bolt's thread, mm. */
    public double minorDiameterMm() {
        return diameterMm - 17 * Math.sqrt(3) / 24 * pitchMm;
    }

    /** Diameter of the circle that has the stress area, mm. */
    public double stressDiameterMm() {
        return (pitchDiameterMm() + minorDiameterMm()) / 2;
    }

    /** As, mm². */
    public double stressAreaMm2() {
        return Math.PI / 4 * stressDiameterMm() * stressDiameterMm();
    }

    @Override
    public String toString() {
        return "M%s×%s".formatted(plain(diameterMm), plain(pitchMm));
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
