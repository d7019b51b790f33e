package cornerbook.app.desk.shop;

import cornerbook.app.desk.Form;
import cornerbook.app.request.Told;
import cornerbook.core.days.WorkHours;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;

/**
 * When people work, and when the shop is closed.
 *
 * @param kept the hours of those who have any
 * @param closed the days from today on, with their reasons
 * @param typed what was refused; empty when nothing was
 * @param error one sentence, empty when nothing was refused
 */
public record HoursPage(
        LocalDate today,
        List<String> people,
        Map<String, Map<DayOfWeek, WorkHours>> kept,
        NavigableMap<LocalDate, String> closed,
        Form typed,
        String error) {
    public HoursPage {
        people = List.copyOf(people);
        kept = Map.copyOf(kept);
    }

    public List<DayOfWeek> weekdays() {
        return List.of(DayOfWeek.values());
    }

    public String name(DayOfWeek weekday) {
        return nameOf(weekday);
    }

    static String nameOf(DayOfWeek weekday) {
        return weekday.getDisplayName(
                TextStyle.FULL_STANDALONE, Told.reader().language().locale());
    }

    /** A name may have spaces, which no id of a page has. */
    public String id(String person) {
        return "person" + people.indexOf(person);
    }

    /** What stands in the field of a person and a weekday. */
    public String at(String person, DayOfWeek weekday) {
        return typed.get("who").equals(person)
                ? typed.get(weekday.name())
                : kept.getOrDefault(person, Map.of())
                        .getOrDefault(weekday, WorkHours.NONE)
                        .written();
    }
}
