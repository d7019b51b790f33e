package cornerbook.core.car;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One measured value. Readings are never changed: a correction is a new reading that names the one it corrects, with a
 * reason.
 *
 * @param id unique in the book, born where the reading was taken
 * @param corner where it was taken; null only for a measure of the whole vehicle
 * @param wheelTag the wheel that it belongs to; null unless the measure belongs to a wheel
 * @param spot groove or pad side; null when the measure has only one
 * @param value in the measure's unit
 * @param asWritten what the person wrote, with its unit
 * @param corrects id of the reading that this one replaces, or null
 * @param reason why it was corrected; null when it corrects nothing
 */
public record Reading(
        String id,
        Measure measure,
        @Nullable Corner corner,
        @Nullable String wheelTag,
        @Nullable Spot spot,
        double value,
        String asWritten,
        @Nullable String corrects,
        @Nullable String reason) {

    public Reading {
        if (!(value >= measure.lowest() && value <= measure.highest())) {
            throw new IllegalArgumentException("%s is %s %s, expected %s to %s %s"
                    .formatted(measure, value, measure.unit(), measure.lowest(), measure.highest(), measure.unit()));
        }
        if (value == 0) {
            // A minus before it means nothing, and no two stores keep it alike.
            value = 0;
        }
        if ((measure.carrier() != Measure.Carrier.VEHICLE) != (corner != null)) {
            throw new IllegalArgumentException(
                    measure + (corner == null ? " needs a corner, expected one" : " has no corner, expected none"));
        }
        if ((measure.carrier() == Measure.Carrier.WHEEL) != (wheelTag != null)) {
            throw new IllegalArgumentException(
                    measure + (wheelTag == null ? " needs a wheel, expected its tag" : " has no wheel, expected none"));
        }
        if (spot == null ? !measure.spots().isEmpty() : !measure.spots().contains(spot)) {
            throw new IllegalArgumentException("%s %s, expected %s"
                    .formatted(
                            measure,
                            spot == null ? "names no spot" : "is at the spot " + word(spot),
                            measure.spots().isEmpty()
                                    ? "none"
                                    : "one of "
                                            + measure.spots().stream()
                                                    .sorted()
                                                    .map(Reading::word)
                                                    .collect(Collectors.joining(", "))));
        }
        if ((corrects == null) != (reason == null)) {
            throw new IllegalArgumentException("a correction names the reading that it corrects and gives a reason");
        }
    }

    private static String word(Spot spot) {
        return spot.name().toLowerCase(Locale.ROOT);
    }

    /** Whether both measured the same thing at the same place. */
    public boolean isAtSamePlaceAs(Reading other) {
        return measure == other.measure
                && corner == other.corner
                && spot == other.spot
                && Objects.equals(wheelTag, other.wheelTag);
    }
}
