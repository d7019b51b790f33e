package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.core.brake.judge.DustRule;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;

/**
 * How many brake pairs were worked on in a calendar week, and what that asks for.
 *
 * @param pairs one to an axle
 */
public record BrakeDust(int pairs) {
    /** Of the week, Monday to Sunday, that this day lies in. */
    public static BrakeDust ofWeek(Book book, LocalDate day) {
        var monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return new BrakeDust(book.countBrakePairs(monday, monday.plusDays(6)));
    }

    /** Whether the simple wet method no longer does. */
    public boolean isOver() {
        return pairs > DustRule.MOST_PAIRS_A_WEEK;
    }

    public String sentence() {
        return "Brake pairs worked on this week: %d. %s (29 CFR 1910.1001 App. F)."
                .formatted(
                        pairs,
                        isOver()
                                ? "Beyond five a week the simple wet method is not enough: work with an enclosure and vacuum, a low-pressure wet wash or an equivalent"
                                : "Up to five a week the simple wet method will do");
    }
}
