package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.request.Told;
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
        return new BrakeDust(book.readings().countBrakePairs(monday, monday.plusDays(6)));
    }

    /** Whether the simple wet method no longer does. */
    public boolean isOver() {
        return pairs > DustRule.MOST_PAIRS_A_WEEK;
    }

    public String sentence() {
        return Told.say(new DeskSaid.BrakePairs(pairs, isOver()));
    }
}
