package cornerbook.app.book.appointment;

import cornerbook.core.days.PlannedWork;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * When a car is to come, and for what.
 *
 * @param time of day; null for any
 * @param minutes how long it is expected to take, 1 to 1440
 * @param hoist by its mark; null for any
 * @param worker who is to work on it; null for anybody
 * @param note may be empty
 */
public record Plan(
        LocalDate day,
        @Nullable LocalTime time,
        PlannedWork work,
        int minutes,
        @Nullable String hoist,
        @Nullable String worker,
        String note) {
    private static final int MOST_MINUTES = 1440;
    private static final int LONGEST_NOTE = 200;

    public Plan {
        if (minutes < 1 || minutes > MOST_MINUTES) {
            throw new Refused(
                    new AppointmentSaid.MinutesOutOfRange(Amount.of(1, "min"), Amount.of(MOST_MINUTES, "min")));
        }
        if (note.length() > LONGEST_NOTE) {
            throw new Refused(new AppointmentSaid.NoteTooLong(LONGEST_NOTE));
        }
    }

    /** Whether the two want the same hoist or the same hands at the same time of the same day. */
    public boolean clashesWith(Plan other) {
        return day.equals(other.day)
                && (isSame(hoist, other.hoist) || isSame(worker, other.worker))
                && time != null
                && other.time != null
                && startsBeforeEnd(time, other.time, other.minutes)
                && startsBeforeEnd(other.time, time, minutes);
    }

    private static boolean isSame(@Nullable String one, @Nullable String other) {
        return one != null && one.equals(other);
    }

    /** Counted from the start: what goes on after midnight has no end of that day. */
    private static boolean startsBeforeEnd(LocalTime start, LocalTime other, int minutes) {
        return Duration.between(other, start).toMinutes() < minutes;
    }
}
