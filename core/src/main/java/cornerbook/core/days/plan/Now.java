package cornerbook.core.days.plan;

import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.Wanted.Stage;
import cornerbook.core.quantity.Range;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The moment from which on a day that has begun is laid anew. What was before it is done.
 *
 * @param minute of that day, by the shop's clock, 0 to 1439
 */
public record Now(LocalDate day, int minute) {
    private static final int DAY_MINUTES = 24 * 60;

    public Now {
        Range.check("minute", minute, 0, DAY_MINUTES - 1, "min");
    }

    /** What is left of stations: those of its day from its minute on, all of later days. */
    public List<Station> left(List<Station> stations) {
        return stations.stream()
                .filter(station -> !station.day().isBefore(day))
                .map(station -> station.day().equals(day) ? left(station) : station)
                .filter(station -> !station.hours().spans().isEmpty())
                .toList();
    }

    private Station left(Station station) {
        WorkHours rest = station.hours().between(minute, DAY_MINUTES);
        return new Station(station.day(), station.person(), station.hoist(), rest, station.skills(), true);
    }

    /**
     * How far a car is that has not come, by the time that was agreed: a quarter of an hour late is in time.
     *
     * @param start minute of the day; null for a day without a time
     */
    public Stage stage(LocalDate agreed, @Nullable Integer start) {
        return agreed.equals(day) && start != null && start + Board.SLACK_MINUTES < minute
                ? Stage.NOT_HERE_YET
                : Stage.TO_COME;
    }
}
