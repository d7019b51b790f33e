package cornerbook.app.desk.days;

import cornerbook.app.picture.days.DayLoad;
import cornerbook.app.picture.days.LoadOfWeeks;
import cornerbook.app.request.Told;
import java.time.LocalDate;
import java.util.List;

/**
 * The weeks ahead: what was agreed against what the days take.
 *
 * @param days whole weeks, from a Monday on
 */
public record WeeksPage(LocalDate today, List<DayLoad> days) {
    public WeeksPage {
        days = List.copyOf(days);
    }

    public String picture() {
        return LoadOfWeeks.svg(days, Told.reader());
    }

    /** Whether the shop has said when anybody works. */
    public boolean hasHours() {
        return days.stream().anyMatch(day -> day.capacityMinutes() > 0);
    }

    /** From today on, those on which somebody works or a car is to come. */
    public List<DayLoad> listed() {
        return days.stream()
                .filter(day -> !day.day().isBefore(today) && (day.cars() > 0 || day.capacityMinutes() > 0))
                .toList();
    }
}
