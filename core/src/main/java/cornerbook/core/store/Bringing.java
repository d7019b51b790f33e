package cornerbook.core.store;

import cornerbook.core.say.Refused;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How a set comes from a store that is elsewhere. Who asks on a day on which nobody works, or later than the last hour, has asked on the
 * next working day; so many working days after that the set is there, from the morning on.
 *
 * @param workingDays 0 to 30; 0 where it comes on the day on which it was asked for
 * @param lastHour until when it is asked for on a day, that minute included; null for all day
 */
public record Bringing(int workingDays, @Nullable LocalTime lastHour) {
    public static final int MOST_WORKING_DAYS = 30;

    /** Where nobody works for so long, days are taken as they come: nothing is looked for without end. */
    private static final int DAYS_LOOKED_AT = 370;

    public Bringing {
        if (workingDays < 0 || workingDays > MOST_WORKING_DAYS) {
            throw new Refused(new StoreSaid.WorkingDaysOutOfRange(MOST_WORKING_DAYS));
        }
    }

    /**
     * The first day on which a set can be there.
     *
     * @param works whether somebody works on a day
     */
    public LocalDate comes(LocalDateTime asked, Predicate<LocalDate> works) {
        boolean late = lastHour != null
                && asked.toLocalTime().truncatedTo(ChronoUnit.MINUTES).isAfter(lastHour);
        var day = first(late ? asked.toLocalDate().plusDays(1) : asked.toLocalDate(), 1, works);
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
