package cornerbook.app.book.rack;

import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * What was done with a set.
 *
 * @param from where it lay, as it was written; null when the book did not know
 * @param to null when it went out
 * @param visitId for which it went out to its car, else null
 * @param day at the shop; null where it was moved before the book kept the day
 */
public record SetMove(
        Kind kind,
        @Nullable String from,
        @Nullable String to,
        @Nullable String visitId,
        @Nullable LocalDate day,
        By by) {
    /** What is done with sets. */
    public enum Kind {
        PUT,
        OUT_TO_CAR,
        OUT_TO_CUSTOMER
    }

    /**
     * The day at the shop.
     *
     * @param shop its time, for what was moved before the book kept the day
     */
    public LocalDate day(ZoneId shop) {
        return day == null ? LocalDate.ofInstant(by.at(), shop) : day;
    }

    public boolean isOut() {
        return kind != Kind.PUT;
    }
}
