package cornerbook.app.book.bay;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What became of a rival reading.
 *
 * @param id of the answer, born at the tablet; null for one that no person gave, and in older books
 * @param rivalId the rival's own id
 * @param person who said so; for readings that agree, who took the rival
 */
public record RivalAnswer(@Nullable String id, String rivalId, Kind kind, String person, Instant madeAt) {
    /** How it was answered. */
    public enum Kind {
        /** It became a correction of the one that stood. */
        TAKEN,
        /** The other stands. */
        KEPT,
        /** Both say the same. */
        AGREED
    }
}
