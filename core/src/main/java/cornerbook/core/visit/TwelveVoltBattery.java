package cornerbook.core.visit;

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
    /** What the cells are made of; voltage tables hold for one chemistry only. */
    public enum Chemistry {
        FLOODED,
        EFB,
        AGM,
        LITHIUM
    }

    /** Standard of the cold cranking rating; their tests differ, so the numbers do not compare. */
    public enum RatingStandard {
        SAE,
        EN,
        IEC,
        DIN,
        JIS
    }

    public TwelveVoltBattery {
        Checks.range("battery capacity", ratedCapacityAh, 5, 300, "A·h");
        if ((ratedCrankingCurrentA == null) != (ratingStandard == null)) {
            throw new IllegalArgumentException("a cold cranking current needs its rating standard");
        }
    }
}
