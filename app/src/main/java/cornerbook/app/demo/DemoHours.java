package cornerbook.app.demo;

import cornerbook.core.days.WorkHours;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The invented people of the invented shop, when they work, and when it is closed. */
final class DemoHours {
    static final String ODILE = "Odile (invented)";
    static final String REMI = "Rémi (invented)";

    private static final WorkHours LONG_DAY = WorkHours.parse("8:00-12:00, 12:30-17:00");
    private static final WorkHours SHORT_DAY = WorkHours.parse("8:00-12:00, 12:30-15:00");
    private static final WorkHours MORNING = WorkHours.parse("8:00-12:00");

    private static final int WEEKS_UNTIL_CLOSED = 3;

    private DemoHours() {}

    static Map<String, Map<DayOfWeek, WorkHours>> people() {
        return Map.of(ODILE, week(LONG_DAY, LONG_DAY, MORNING), REMI, week(LONG_DAY, SHORT_DAY, WorkHours.NONE));
    }

    private static Map<DayOfWeek, WorkHours> week(WorkHours usual, WorkHours friday, WorkHours saturday) {
        var week = new EnumMap<DayOfWeek, WorkHours>(DayOfWeek.class);
        List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY)
                .forEach(day -> week.put(day, usual));
        week.put(DayOfWeek.FRIDAY, friday);
        week.put(DayOfWeek.SATURDAY, saturday);
        return week;
    }

    /** A Wednesday in the weeks ahead. */
    static LocalDate closed(LocalDate today) {
        return today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                .plusWeeks(WEEKS_UNTIL_CLOSED)
                .with(TemporalAdjusters.next(DayOfWeek.WEDNESDAY));
    }
}
