package cornerbook.app.desk.shop;

import cornerbook.app.book.people.CalendarAddress;
import cornerbook.app.book.shop.Absence;
import cornerbook.app.desk.Form;
import cornerbook.app.picture.QrCode;
import cornerbook.app.request.Told;
import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * When people work, when the shop is closed, and which calendars may read the appointments.
 *
 * @param kept hours and skills
 * @param closed the days from today on, with their reasons
 * @param calendars which there are
 * @param made the one that was made just now
 * @param typed what was refused; empty when nothing was
 * @param error one sentence, empty when nothing was refused
 */
public record HoursPage(
        LocalDate today,
        List<String> people,
        Kept kept,
        NavigableMap<LocalDate, String> closed,
        List<CalendarAddress> calendars,
        @Nullable MadeCalendar made,
        Form typed,
        String error) {
    public HoursPage {
        people = List.copyOf(people);
        calendars = List.copyOf(calendars);
    }

    /**
     * What the book has of people.
     *
     * @param hours of those who have any
     * @param skills what each has learned, of those who have learned anything
     * @param away who is not there on some days, from today on
     */
    public record Kept(
            Map<String, Map<DayOfWeek, WorkHours>> hours, Map<String, Set<Skill>> skills, List<Absence> away) {
        public Kept {
            hours = Map.copyOf(hours);
            skills = Map.copyOf(skills);
            away = List.copyOf(away);
        }
    }

    /** The address of a calendar, which the book does not keep. */
    public record MadeCalendar(String whose, String address) {
        /** To be read by a telephone. */
        public String code() {
            return QrCode.svg(address, Told.labels("app/desk/shop").of("calendar-code"));
        }
    }

    /** Whose calendars there may be: the shop's first. */
    public List<String> owners() {
        return Stream.concat(Stream.of(CalendarAddress.SHOP), people.stream()).toList();
    }

    public String ownerName(String whose) {
        return whose.equals(CalendarAddress.SHOP) ? Told.labels("app/desk/shop").of("whole-shop") : whose;
    }

    /** The day on which the address of somebody was made; null when there is none. */
    public @Nullable LocalDate madeOn(String whose) {
        return calendars.stream()
                .filter(each -> each.whose().equals(whose))
                .map(each -> Told.reader().date(each.madeAt()))
                .findFirst()
                .orElse(null);
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

    /** Whether the field of a person and a skill is ticked. */
    public boolean has(String person, Skill skill) {
        return typed.get("who").equals(person)
                ? typed.has(skill.name())
                : kept.skills().getOrDefault(person, Set.of()).contains(skill);
    }

    /** What stands in the field of a person and a weekday. */
    public String at(String person, DayOfWeek weekday) {
        return typed.get("who").equals(person)
                ? typed.get(weekday.name())
                : kept.hours()
                        .getOrDefault(person, Map.of())
                        .getOrDefault(weekday, WorkHours.NONE)
                        .written();
    }
}
