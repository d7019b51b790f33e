package cornerbook.core.battery;

import cornerbook.core.quantity.Range;
import cornerbook.core.say.Refused;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The 12 V battery as its label says.
 *
 * @param ratedCrankingCurrentA null when the label gives none, as for most lithium batteries
 * @param ratingStandard the standard of that current; null only with it
 * @param chargeBelowV voltage at rest under which its maker has it charged; null when that is not known
 */
public record TwelveVoltBattery(
        Chemistry chemistry,
        double ratedCapacityAh,
        @Nullable Double ratedCrankingCurrentA,
        @Nullable RatingStandard ratingStandard,
        @Nullable LocalDate installedOn,
        @Nullable Double chargeBelowV) {
    public TwelveVoltBattery {
        Range.check(BatterySaid.Part.CAPACITY, ratedCapacityAh, 5, 300, "A·h");
        if ((ratedCrankingCurrentA == null) != (ratingStandard == null)) {
            throw new Refused(BatterySaid.Sentence.NEEDS_STANDARD);
        }
        if (chargeBelowV != null) {
            Range.check(BatterySaid.Part.CHARGE_BELOW, chargeBelowV, 10, 15, "V");
        }
    }

    /** A battery of which its maker's voltage is not known. */
    public TwelveVoltBattery(
            Chemistry chemistry,
            double ratedCapacityAh,
            @Nullable Double ratedCrankingCurrentA,
            @Nullable RatingStandard ratingStandard,
            @Nullable LocalDate installedOn) {
        this(chemistry, ratedCapacityAh, ratedCrankingCurrentA, ratingStandard, installedOn, null);
    }
}
