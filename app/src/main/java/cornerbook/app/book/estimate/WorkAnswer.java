package cornerbook.app.book.estimate;

import cornerbook.core.release.ChargedWork;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What was said of work that no agreed line stands for.
 *
 * @param line the key of the line that it was agreed by; null where it is none
 * @param reason why nothing is charged: one of {@link FreeReason} by its name, or a person's own words; empty where something is
 * @param person who said so in the shop
 */
public record WorkAnswer(
        String id,
        String visitId,
        ChargedWork work,
        Kind kind,
        @Nullable String line,
        String reason,
        String person,
        Instant madeAt) {
    /** What was said. */
    public enum Kind {
        /** It was done, and the customer pays nothing for it. */
        WITHOUT_CHARGE,
        /** The customer agreed to it by a line that somebody typed by hand. */
        AS_LINE,
        /** What was said before counts no longer. */
        ASKED_AGAIN
    }
}
