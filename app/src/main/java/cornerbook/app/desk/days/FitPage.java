package cornerbook.app.desk.days;

import cornerbook.app.desk.Form;
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
 */
public record FitPage(
        Form asked, PlannedWork work, int minutes, List<Opening> today, DayOffers.@Nullable OfferedDay later) {
    public FitPage {
        today = List.copyOf(today);
    }

    public LocalTime time(int minute) {
        return DayFacts.timeOf(minute);
    }
}
