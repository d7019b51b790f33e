package cornerbook.app.book;

import java.time.Instant;

/**
 * What became of a rival reading.
 *
 * @param rivalId the rival's own id
 * @param person who said so; for readings that agree, who took the rival
 */
public record RivalAnswer(String rivalId, Kind kind, String person, Instant madeAt) {
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
