package cornerbook.core.brake.disc;

import cornerbook.core.numeric.CholeskyFactor;
import java.util.ArrayList;
import java.util.List;

/**
 * Lateral runout as a vector: the first harmonic of a face over one turn, which is what a tilt leaves. Tilts add as vectors
 * (small angles).
 *
 * @param cosineMm amplitude at stud 1
 * @param sineMm amplitude a quarter turn further
 */
public record Runout(double cosineMm, double sineMm) {
    private static final int FEWEST_READINGS = 4;

    /**
     * The first harmonic by least squares: value = offset + cosine · cos α + sine · sin α.
     *
     * @param readings four or more, over the whole turn; eight give a fair look at what is not a tilt
     * @throws IllegalArgumentException when they are too few, or do not spread over the turn
     */
    public static Runout of(List<DialReading> readings) {
        if (readings.size() < FEWEST_READINGS) {
            throw new IllegalArgumentException(
                    "%s dial readings, expected %s or more".formatted(readings.size(), FEWEST_READINGS));
        }
        var normal = new double[9];
        var right = new double[3];
        for (var reading : readings) {
            double angle = Math.toRadians(reading.angleDegrees());
            double[] row = {1, Math.cos(angle), Math.sin(angle)};
            for (int j = 0; j < 3; j++) {
                right[j] += row[j] * reading.valueMm();
                for (int k = 0; k < 3; k++) {
                    normal[j * 3 + k] += row[j] * row[k];
                }
            }
        }
        var solution = CholeskyFactor.find(normal, 3)
                .orElseThrow(() -> new IllegalArgumentException(
                        "the dial readings stand at too few angles, expected them over the whole turn"))
                .solve(right);
        return new Runout(solution[1], solution[2]);
    }

    /** Equally spaced readings from stud 1 on, over one turn. */
    public static Runout ofEquallySpaced(List<Double> valuesMm) {
        var readings = new ArrayList<DialReading>();
        for (int i = 0; i < valuesMm.size(); i++) {
            readings.add(new DialReading(360.0 * i / valuesMm.size(), valuesMm.get(i)));
        }
        return of(readings);
    }

    /** Total runout as a dial shows it, high to low: twice the amplitude. */
    public double totalMm() {
        return 2 * Math.hypot(cosineMm, sineMm);
    }

    /** Angle of the high spot, 0 to 360° from stud 1. */
    public double highSpotDegrees() {
        double degrees = Math.toDegrees(Math.atan2(sineMm, cosineMm));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** The same tilt, turned on by this angle. */
    public Runout turned(double degrees) {
        double angle = Math.toRadians(degrees);
        return new Runout(
                cosineMm * Math.cos(angle) - sineMm * Math.sin(angle),
                cosineMm * Math.sin(angle) + sineMm * Math.cos(angle));
    }

    Runout plus(Runout other) {
        return new Runout(cosineMm + other.cosineMm, sineMm + other.sineMm);
    }

    Runout minus(Runout other) {
        return new Runout(cosineMm - other.cosineMm, sineMm - other.sineMm);
    }
}
