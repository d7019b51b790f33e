package cornerbook.app.book.rack;

import org.jspecify.annotations.Nullable;

/**
 * What was done with a set.
 *
 * @param from where it lay, as it was written; null when the book did not know
 * @param to null when it went out
 * @param visitId for which it went out to its car, else null
 */
public record SetMove(
        Kind kind,
        @Nullable String from,
        @Nullable String to,
        @Nullable String visitId,
        By by) {
    /** What is done with sets. */
    public enum Kind {
        PUT,
        OUT_TO_CAR,
        OUT_TO_CUSTOMER
    }

    public boolean isOut() {
        return kind != Kind.PUT;
    }
}
