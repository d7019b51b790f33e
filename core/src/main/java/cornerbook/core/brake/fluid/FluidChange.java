package cornerbook.core.brake.fluid;

import cornerbook.core.quantity.Range;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When the brake fluid was changed, and how often the vehicle manufacturer asks for it.
 *
 * @param changedOn the last change that is known of; a newer one may stand among the readings; or null
 * @param intervalYears 0.5 to 10 years, or null when it is not known
 */
public record FluidChange(
        @Nullable LocalDate changedOn, @Nullable Double intervalYears) {
    /** Nothing is known. */
    public static final FluidChange NOT_KNOWN = new FluidChange(null, null);

    public FluidChange {
        Range.checkKnown(FluidPart.INTERVAL, intervalYears, 0.5, 10, "years");
    }
}
