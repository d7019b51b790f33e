package cornerbook.core.visit;

import cornerbook.core.brake.DiscThickness;
import cornerbook.core.quantity.Quantities;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a person writes for a reading, as its value. All edges read by it. A thickness variation may be written as the
 * thickness at four points or more around the disc, parted by spaces or semicolons, with one unit at the end: "27.31 27.30
 * 27.30 27.32 mm"; its value is then the thickest less the thinnest.
 */
public final class WrittenReading {
    private static final Pattern BETWEEN_POINTS = Pattern.compile("[;\\s]+");
    private static final Pattern UNIT = Pattern.compile("[^0-9.,+-].*");
    private static final int FEWEST_POINTS = 4;
    /** A difference of decimal readings is a decimal again, to a nanometre. */
    private static final double NANOMETRES_PER_MM = 1e6;

    private WrittenReading() {}

    /**
     * The value in the measure's unit.
     *
     * @throws IllegalArgumentException with one sentence when it cannot be read
     */
    public static double valueOf(Measure measure, String written) {
        return findPoints(measure, written)
                .map(points -> Math.round(points.variationMm() * NANOMETRES_PER_MM) / NANOMETRES_PER_MM)
                .orElseGet(() -> Quantities.parse(written, measure.unit()));
    }

    /** The points that a thickness variation was written as; empty when it was written as one value. */
    public static Optional<DiscThickness> findPoints(Measure measure, String written) {
        var parts = BETWEEN_POINTS.splitAsStream(written.strip()).toList();
        if (measure != Measure.DISC_THICKNESS_VARIATION || parts.size() < FEWEST_POINTS) {
            return Optional.empty();
        }
        var last = parts.getLast();
        boolean hasUnit = UNIT.matcher(last).matches();
        var unit = hasUnit ? last : measure.unit();
        return Optional.of(new DiscThickness(parts.subList(0, hasUnit ? parts.size() - 1 : parts.size()).stream()
                .map(point -> Quantities.parse(point + " " + unit, measure.unit()))
                .toList()));
    }
}
