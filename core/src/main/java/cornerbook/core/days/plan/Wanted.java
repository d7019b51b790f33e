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
     * @param stage how far its car is, of a visit of a day that has begun
     */
    public record Agreed(
            LocalDate day,
            @Nullable Integer start,
            @Nullable String person,
            @Nullable String hoist,
            Stage stage) {
        /** Of a car that is still to come. */
        public Agreed(LocalDate day, @Nullable Integer start, @Nullable String person, @Nullable String hoist) {
            this(day, start, person, hoist, Stage.TO_COME);
        }
    }

    /** How far the car of an agreed visit is. */
    public enum Stage {
        TO_COME,
        /** Its time is over and it is not here. */
        NOT_HERE_YET,
        /** It waits: that day or not at all. */
        HERE,
        /** Its work has begun: it stays where it is, whatever else has to give way. */
        AT_WORK
    }

    boolean is(Stage stage) {
        return agreed != null && agreed.stage() == stage;
    }

    /** Whether it can be on no other day: its car is here. */
    boolean isOfItsDayOnly() {
        return is(Stage.HERE) || is(Stage.AT_WORK);
    }

    /** The first of the days that the customer would like; of a visit that has such. */
    LocalDate firstWished() {
        return new TreeSet<>(wished).first();
    }
}
