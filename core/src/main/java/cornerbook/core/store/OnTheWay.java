package cornerbook.core.store;

import cornerbook.core.say.Refused;
import java.time.LocalDate;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * How long a set is on the way from a store that is elsewhere. Who asks for it on a day on which nobody works has asked on the next
 * working day; so many working days after that the set is there, from the morning on.
 *
 * @param workingDays 0 to 30; 0 where it comes on the day on which it was asked for
 */
public record OnTheWay(int workingDays) {
    public static final int MOST_WORKING_DAYS = 30;

    /** Where nobody works for so long, days are taken as they come: nothing is looked for without end. */
    private static final int DAYS_LOOKED_AT = 370;

    public OnTheWay {
        if (workingDays < 0 || workingDays > MOST_WORKING_DAYS) {
            throw new Refused(new StoreSaid.WorkingDaysOutOfRange(MOST_WORKING_DAYS));
        }
    }

    /**
     * The first day on which a set can be there.
     *
     * @param works whether somebody works on a day
     */
    public LocalDate comes(LocalDate asked, Predicate<LocalDate> works) {
        var day = first(asked, 1, works);
        for (int worked = 0; worked < workingDays; worked++) {
            day = first(day.plusDays(1), 1, works);
        }
        return day;
    }

    /** The last day on which a set can be asked for so that it is there on a day. */
    public LocalDate askBy(LocalDate needed, Predicate<LocalDate> works) {
        var day = first(needed, -1, works);
        for (int worked = 0; worked < workingDays; worked++) {
            day = first(day.minusDays(1), -1, works);
        }
        return day;
    }

    private static LocalDate first(LocalDate from, int step, Predicate<LocalDate> works) {
        return Stream.iterate(from, day -> day.plusDays(step))
                .limit(DAYS_LOOKED_AT)
                .filter(works)
                .findFirst()
                .orElse(from);
    }
}
