package cornerbook.app.book.shop;

import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.days.WorkHours;
import cornerbook.core.tool.ShopTool;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** When people work, on which days the shop is closed, and so how much work a day takes. */
public final class ShopHours {
    private final Transactions store;

    public ShopHours(Transactions store) {
        this.store = store;
    }

    /** The hours of everybody who works here, by day of the week; who has none is left out. */
    public Map<String, Map<DayOfWeek, WorkHours>> list() {
        return store.read(handle -> handle.select(
                        "select work_hours.* from work_hours join person on person.name = work_hours.person where person.removed_at is null")
                .map((row, context) -> new OfDay(
                        row.getString("person"),
                        DayOfWeek.of(row.getInt("weekday")),
                        WorkHours.parse(row.getString("spans"))))
                .collect(Collectors.groupingBy(
                        OfDay::person,
                        TreeMap::new,
                        Collectors.toMap(
                                OfDay::weekday,
                                OfDay::hours,
                                (one, other) -> one,
                                () -> new EnumMap<>(DayOfWeek.class)))));
    }

    private record OfDay(String person, DayOfWeek weekday, WorkHours hours) {}

    /** The hours of a person, in the place of all that stood there. */
    public void put(String person, Map<DayOfWeek, WorkHours> hours) {
        store.write(handle -> {
            handle.execute("delete from work_hours where person = ?", person);
            hours.forEach((weekday, each) -> {
                if (!each.spans().isEmpty()) {
                    handle.execute(
                            "insert into work_hours (person, weekday, spans) values (?, ?, ?)",
                            person,
                            weekday.getValue(),
                            each.written());
                }
            });
            return person;
        });
    }

    /** The days from one on at which the shop is closed, with the reason, which may be empty. */
    public NavigableMap<LocalDate, String> listClosed(LocalDate first) {
        return store.read(handle -> handle.select("select * from closed_day where day >= ?", first.toString())
                .map((row, context) -> Map.entry(LocalDate.parse(row.getString("day")), row.getString("why")))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, other) -> one, TreeMap::new)));
    }

    public void close(LocalDate day, String why) {
        store.write(handle -> handle.execute(
                "insert into closed_day (day, why) values (?, ?) on conflict (day) do update set why = excluded.why",
                day.toString(),
                why));
    }

    /** The shop is open on a day after all. */
    public void open(LocalDate day) {
        store.write(handle -> handle.execute("delete from closed_day where day = ?", day.toString()));
    }

    /** On which days those who work here are not there, from a day on; what was taken back is left out. */
    public List<Absence> listAway(LocalDate first) {
        return store.read(handle -> handle.select(
                        "select person_away.* from person_away join person on person.name = person_away.person"
                                + " where person.removed_at is null and last_day >= ?"
                                + " and not exists (select 1 from person_back where away_id = person_away.id)"
                                + " order by first_day, person_away.person, person_away.id",
                        first.toString())
                .map((row, context) -> new Absence(
                        row.getString("id"),
                        row.getString("person"),
                        LocalDate.parse(row.getString("first_day")),
                        LocalDate.parse(row.getString("last_day"))))
                .list());
    }

    /**
     * Somebody is not there on some days. Sent again it counts once.
     *
     * @param by who says so; null where nobody is named
     */
    public void away(Absence absence, @Nullable String by, Instant at) {
        store.write(handle -> new TableRow("person_away")
                .set("id", absence.id())
                .set("person", absence.person())
                .set("first_day", absence.first())
                .set("last_day", absence.last())
                .set("said_by", by)
                .set("made_at", at)
                .insertOnce(handle));
    }

    /** Somebody is there after all; what is not known, or was taken back before, is nothing. */
    public void back(String absenceId, @Nullable String by, Instant at) {
        store.write(handle -> TableRow.count(handle, "person_away where id = ?", absenceId) == 1
                && TableRow.count(handle, "person_back where away_id = ?", absenceId) == 0
                && new TableRow("person_back")
                        .set("id", UUID.randomUUID())
                        .set("away_id", absenceId)
                        .set("said_by", by)
                        .set("made_at", at)
                        .insertOnce(handle));
    }

    /**
     * On which days somebody works here. Where nobody has said when, Monday to Friday do: common practice, no source.
     *
     * @param first day that is asked about
     */
    public Predicate<LocalDate> workingDays(LocalDate first) {
        var closed = Set.copyOf(listClosed(first).keySet());
        var people = list();
        var away = listAway(first);
        var usual = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
        return day -> !closed.contains(day)
                && (people.isEmpty()
                        ? usual.contains(day.getDayOfWeek())
                        : people.entrySet().stream()
                                .anyMatch(each ->
                                        !hoursOf(each, day, away).spans().isEmpty()));
    }

    /**
     * How much work days take, in their order.
     *
     * @param tools of the shop; each hoist has room for one car
     * @return minutes by day
     */
    public NavigableMap<LocalDate, Integer> capacityMinutes(LocalDate first, int days, List<ShopTool> tools) {
        var people = list().entrySet();
        var away = listAway(first);
        var closed = listClosed(first);
        int hoists = (int) tools.stream()
                .filter(tool -> tool.kind() == ShopTool.Kind.HOIST)
                .count();
        var capacity = new TreeMap<LocalDate, Integer>();
        first.datesUntil(first.plusDays(days)).forEach(day -> {
            var hours = people.stream().map(each -> hoursOf(each, day, away)).toList();
            capacity.put(day, closed.containsKey(day) ? 0 : WorkHours.capacityMinutes(hours, hoists));
        });
        return capacity;
    }

    /** The hours of everybody who works here on one day. */
    public static Map<String, WorkHours> ofDay(
            Map<String, Map<DayOfWeek, WorkHours>> people, LocalDate day, List<Absence> away) {
        return people.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, each -> hoursOf(each, day, away), (one, other) -> one, TreeMap::new));
    }

    private static WorkHours hoursOf(
            Map.Entry<String, Map<DayOfWeek, WorkHours>> person, LocalDate day, List<Absence> away) {
        return away.stream().anyMatch(each -> each.covers(person.getKey(), day))
                ? WorkHours.NONE
                : person.getValue().getOrDefault(day.getDayOfWeek(), WorkHours.NONE);
    }
}
