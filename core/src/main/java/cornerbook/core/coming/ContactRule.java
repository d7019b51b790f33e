package cornerbook.core.coming;

import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Whether a customer may be reached for a purpose in a way, as a place has it. Who declined is not reached, who agreed is; who was never
 * asked may be reached for some time after the last visit, or always, or not at all.
 *
 * @param months after the last visit for which who was never asked may be reached; null where there is no end, 0 where a person has
 *     to be asked first
 * @param source the law or practice that it comes from
 */
public record ContactRule(@Nullable Integer months, Said source) {
    public ContactRule {
        if (months != null && months < 0) {
            throw new IllegalArgumentException(
                    "months after the last visit is %s, expected 0 or more".formatted(months));
        }
    }

    /**
     * Whether the customer may be reached on a day.
     *
     * @param agreed what the customer answered last; null when never asked
     */
    public boolean permits(@Nullable Boolean agreed, LocalDate lastVisit, LocalDate day) {
        if (agreed != null) {
            return agreed;
        }
        return months == null || (months > 0 && !day.isAfter(lastVisit.plusMonths(months)));
    }
}
