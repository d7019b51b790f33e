package cornerbook.core.brake;

import cornerbook.core.quantity.Range;
import cornerbook.core.season.DistancePerDay;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How long parts that wear on the same car hold together, as the two pads of a corner. The probability that all hold is taken as the
 * product of each one's. They share the distance, which moves them the same way, so the true one is at least that: the
 * product errs to the safe side.
 *
 * @param distance to come
 */
public record ThicknessOutlook(List<Part> parts, DistancePerDay distance) {
    private static final double TOLERANCE_DAYS = 0.25;

    /**
     * One part.
     *
     * @param run1000Km since the distance that its wear counts from, until today
     */
    public record Part(ThicknessWear wear, double run1000Km, double limitMm) {}

    public ThicknessOutlook {
        parts = List.copyOf(parts);
    }

    /** The same with the parts of another, which run the same distance. */
    public ThicknessOutlook with(ThicknessOutlook other) {
        var all = new ArrayList<>(parts);
        all.addAll(other.parts);
        return new ThicknessOutlook(all, distance);
    }

    /** Probability that every part is at or above its limit some days on. */
    public double probabilityHolds(double days) {
        return parts.stream()
                .mapToDouble(part -> part.wear.probabilityHolds(part.run1000Km, days, distance, part.limitMm))
                .reduce(1, (one, other) -> one * other);
    }

    /**
     * Days until that probability falls through the confidence; 0 when it has, empty when it does not within {@code mostDays}.
     *
     * @param confidence above 0.5, below 1
     */
    public OptionalDouble horizonDays(double confidence, double mostDays) {
        Range.check("confidence", confidence, 0.5, 0.9999, "");
        if (probabilityHolds(0) < confidence) {
            return OptionalDouble.of(0);
        }
        if (probabilityHolds(mostDays) >= confidence) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = mostDays;
        while (high - low > TOLERANCE_DAYS) {
            double middle = 0.5 * (low + high);
            if (probabilityHolds(middle) >= confidence) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }
}
