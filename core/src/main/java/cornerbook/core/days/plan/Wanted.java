package cornerbook.core.days.plan;

import cornerbook.core.days.Skill;
import cornerbook.core.quantity.Range;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A visit that is to have its place.
 *
 * @param minutes how long it is expected to take, 1 to 1440
 * @param earliest no day before it is taken: the set has to be fetched, or the season has not begun
 * @param due the last day on which it is in time; null where it has none
 * @param wished days that the customer would like, any of which will do; empty where nobody asked for one
 * @param needs what who works on it has to have learned
 * @param agreed what was agreed; null where nothing was
 */
public record Wanted(
        String id,
        int minutes,
        LocalDate earliest,
        @Nullable LocalDate due,
        Set<LocalDate> wished,
        Set<Skill> needs,
        @Nullable Agreed agreed) {
    private static final int MOST_MINUTES = 1440;

    public Wanted {
        Range.check("minutes", minutes, 1, MOST_MINUTES, "min");
        wished = Set.copyOf(wished);
        needs = Set.copyOf(needs);
    }

    /**
     * What stands in the book.
     *
     * @param start minute of the day; null for a day without a time
     * @param person who is to work on it; null for anybody
     * @param hoist by its mark; null for any
     */
    public record Agreed(
            LocalDate day,
            @Nullable Integer start,
            @Nullable String person,
            @Nullable String hoist) {}

    /** The first of the days that the customer would like; of a visit that has such. */
    LocalDate firstWished() {
        return new TreeSet<>(wished).first();
    }
}
