package cornerbook.app.desk.days;

import cornerbook.app.book.car.CarSearch;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.SetsThere;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.plan.Openings.Opening;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a car that stands here now fits.
 *
 * @param asked what stands in the form
 * @param minutes how long it is expected to take
 * @param today where it fits today; empty where it does not
 * @param later the next day on which it fits; null where none of the coming weeks has room
 * @param named the cars that were named; null where none was
 * @param coming the set of that car that has to be brought first; null where none has
 */
public record FitPage(
        Form asked,
        PlannedWork work,
        int minutes,
        List<Opening> today,
        DayOffers.@Nullable OfferedDay later,
        CarSearch.@Nullable Found named,
        SetsThere.@Nullable Coming coming) {
    public FitPage {
        today = List.copyOf(today);
    }

    /** Whether a car was named and not found, or several were. */
    public boolean isUnclear() {
        return named != null && named.all() != 1;
    }

    public LocalTime time(int minute) {
        return DayFacts.timeOf(minute);
    }
}
