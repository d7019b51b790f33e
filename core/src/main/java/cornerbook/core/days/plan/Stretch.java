package cornerbook.core.days.plan;

import cornerbook.core.days.WorkHours;
import java.time.LocalDate;

/**
 * A part of a person's day at a hoist that nothing has yet. A visit stands in one stretch as a whole; a break may interrupt it,
 * another car not.
 */
public record Stretch(Station station, WorkHours free) {
    public LocalDate day() {
        return station.day();
    }

    /** How much work it takes, min. */
    public int minutes() {
        return free.minutes();
    }
}
