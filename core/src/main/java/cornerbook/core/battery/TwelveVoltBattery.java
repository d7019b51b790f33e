package cornerbook.core.battery;

import cornerbook.core.say.Refused;

import cornerbook.core.quantity.Range;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The 12 V battery as its label says.
 *
 * @param ratedCrankingCurrentA null when the label gives none, as for most lithium batteries
 * @param ratingStandard the standard of that current; null only with it
 */
public record TwelveVoltBattery(
        Chemistry chemistry,
        double ratedCapacityAh,
        @Nullable Double ratedCrankingCurrentA,
        @Nullable RatingStandard ratingStandard,
        @Nullable LocalDate installedOn) {
    public TwelveVoltBattery {
        Range.check(BatterySaid.Part.CAPACITY, ratedCapacityAh, 5, 300, "A·h");
        if ((ratedCrankingCurrentA == null) != (ratingStandard == null)) {
            throw new Refused(BatterySaid.Sentence.NEEDS_STANDARD);
        }
    }
}
