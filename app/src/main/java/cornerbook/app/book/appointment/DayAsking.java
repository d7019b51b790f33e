package cornerbook.app.book.appointment;

import cornerbook.core.days.PlannedWork;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * A customer was asked for a day.
 *
 * @param minutes how long it is expected to take
 * @param until the last day that may be picked
 * @param language tag of that in which the customer is asked
 * @param person who asked; null where nobody was named
 */
public record DayAsking(
        String id,
        Appointment.Car car,
        PlannedWork work,
        int minutes,
        LocalDate until,
        String language,
        @Nullable String person,
        Instant madeAt) {
    /**
     * What the customer would like.
     *
     * @param day null where the customer would rather be called
     * @param time null with the day
     * @param answered whether something became of it
     */
    public record Wish(
            String id,
            DayAsking asking,
            @Nullable LocalDate day,
            @Nullable LocalTime time,
            Instant madeAt,
            boolean answered) {}
}
