package cornerbook.app.book.rack;

import cornerbook.core.store.OnTheWay;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How sets come from a room that is elsewhere. Who asks for one later than the last hour has asked on the next day.
 *
 * @param lastHour until when it is asked for on a day, that minute included; null for all day
 */
public record Bringing(OnTheWay way, @Nullable LocalTime lastHour) {
    /** The first day on which a set can be there. */
    public LocalDate comes(LocalDateTime asked, Predicate<LocalDate> works) {
        boolean late = lastHour != null
                && asked.toLocalTime().truncatedTo(ChronoUnit.MINUTES).isAfter(lastHour);
        return way.comes(late ? asked.toLocalDate().plusDays(1) : asked.toLocalDate(), works);
    }
}
