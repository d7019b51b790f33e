package cornerbook.app.book.out;

import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.DetailRows;
import cornerbook.app.book.car.UsedToolLedger;
import cornerbook.app.book.out.CarRows.WheelRow;
import cornerbook.app.book.out.VisitRows.Person;
import cornerbook.app.book.out.VisitRows.TickRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.tool.ToolRows;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.tool.ShopTool;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jdbi.v3.core.Handle;

/** Walks through all that was measured and done. */
public final class OutLedger {
    /** Who first worked when: as a technician on a day, at a tablet at a moment. Both are text that sorts by time. */
    private static final String PEOPLE = """
        select name from (
            select technician as name, min(visit_date) as began from visit where technician is not null group by technician
            union all select person, min(made_at) from reading_author group by person
            union all select person, min(made_at) from work_tick group by person
        ) worked
        group by name order by min(began), name\
        """;

    private final Transactions store;

    public OutLedger(Transactions store) {
        this.store = store;
    }

    /** Takes the cars of a walk. */
    public interface Walker {
        /** Is told how many cars come. */
        void begin(int cars);

        /** Takes the next one. */
        void take(CarRows car);
    }

    /**
     * Gives all cars, one after the other and only one in memory, as the book stands at one moment.
     *
     * @throws cornerbook.app.book.store.BookException when a row of one cannot stand
     */
    public void walk(Walker walker) {
        store.read(handle -> {
            var ids = handle.select("select id from vehicle order by id")
                    .mapTo(String.class)
                    .list();
            var people = people(handle);
            walker.begin(ids.size());
            for (int i = 0; i < ids.size(); i++) {
                walker.take(readCar(handle, i + 1, ids.get(i), people));
            }
            return ids.size();
        });
    }

    private static Map<String, Person> people(Handle handle) {
        var people = new HashMap<String, Person>();
        handle.select(PEOPLE)
                .mapTo(String.class)
                .forEach(name -> people.put(name, new Person(people.size() + 1, name)));
        return people;
    }

    private static CarRows readCar(Handle handle, int number, String id, Map<String, Person> people) {
        try {
            return car(handle, number, id, people);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw CarReader.unreadable(id, e);
        }
    }

    private static CarRows car(Handle handle, int number, String id, Map<String, Person> people) {
        var wheels = wheels(handle, id);
        var visits = visits(handle, id, wheels, people);
        return handle.select(
                        "select vehicle.*, customer.name as customer_name from vehicle join customer on customer.id = vehicle.customer_id where vehicle.id = ?",
                        id)
                .map((row, context) -> new CarRows(
                        number,
                        id,
                        row.getString("name"),
                        row.getString("plate"),
                        row.getString("vin"),
                        row.getString("customer_name"),
                        DetailRows.constant(row, "drive", DriveLayout.class),
                        DetailRows.flag(row, "electric"),
                        row.getString("jurisdiction"),
                        List.copyOf(wheels.values()),
                        visits))
                .one();
    }

    private static Map<String, WheelRow> wheels(Handle handle, String id) {
        var sets = new HashMap<String, Integer>();
        var wheels = new LinkedHashMap<String, WheelRow>();
        var counts = new HashMap<Integer, Integer>();
        query(
                handle,
                "select wheel.*, wheel_set.season from wheel_set join wheel on wheel.vehicle_id = wheel_set.vehicle_id and wheel.set_id = wheel_set.id where wheel_set.vehicle_id = ? order by wheel_set.place_in_list, wheel.place_in_list",
                id,
                row -> {
                    int set = sets.computeIfAbsent(row.getString("set_id"), added -> sets.size() + 1);
                    var tag = row.getString("tag");
                    wheels.put(
                            tag,
                            new WheelRow(
                                    tag,
                                    set,
                                    counts.merge(set, 1, Integer::sum),
                                    SeasonKind.valueOf(row.getString("season")),
                                    row.getString("tyre_model"),
                                    row.getString("tyre_size"),
                                    DetailRows.number(row, "new_depth_mm")));
                });
        return wheels;
    }

    private static List<VisitRows> visits(
            Handle handle, String id, Map<String, WheelRow> wheels, Map<String, Person> people) {
        var readings = readings(handle, id);
        var ticks = ticks(handle, id, wheels, people);
        var tools = new HashMap<String, List<ShopTool>>();
        query(
                handle,
                UsedToolLedger.query("visit.vehicle_id"),
                id,
                row -> tools.computeIfAbsent(row.getString("visit_id"), key -> new ArrayList<>())
                        .add(ToolRows.tool(row)));
        var visits = new ArrayList<VisitRows>();
        query(handle, "select * from visit where vehicle_id = ? order by visit_date, odometer_km, id", id, row -> {
            var visitId = row.getString("id");
            boolean cancelled = row.getInt("cancelled") == 1;
            visits.add(new VisitRows(
                    visits.size() + 1,
                    visitId,
                    LocalDate.parse(row.getString("visit_date")),
                    row.getDouble("odometer_km"),
                    people.get(row.getString("technician")),
                    cancelled,
                    readings.getOrDefault(visitId, new VisitReadings()).rows(cancelled, wheels, people),
                    ticks.getOrDefault(visitId, List.of()),
                    tools.getOrDefault(visitId, List.of())));
        });
        return visits;
    }

    private static Map<String, VisitReadings> readings(Handle handle, String id) {
        var readings = new HashMap<String, VisitReadings>();
        query(
                handle,
                """
                select reading.*, moved_reading.reading_id as moved, reading_author.person, reading_author.made_at
                from visit
                    join reading on reading.visit_id = visit.id
                    left join moved_reading on moved_reading.reading_id = reading.id
                    left join reading_author on reading_author.reading_id = reading.id
                where visit.vehicle_id = ? order by reading.visit_id, reading.place_in_list, reading.id\
                """,
                id,
                row -> readings.computeIfAbsent(row.getString("visit_id"), key -> new VisitReadings())
                        .add(row));
        return readings;
    }

    private static Map<String, List<TickRow>> ticks(
            Handle handle, String id, Map<String, WheelRow> wheels, Map<String, Person> people) {
        var ticks = new HashMap<String, List<TickRow>>();
        query(
                handle,
                "select work_tick.* from visit join work_tick on work_tick.visit_id = visit.id where visit.vehicle_id = ? order by work_tick.visit_id, work_tick.place_in_list, work_tick.id",
                id,
                row -> {
                    var tick = cornerbook.app.book.work.TickRow.read(row, List.of());
                    var ofVisit = ticks.computeIfAbsent(row.getString("visit_id"), key -> new ArrayList<>());
                    ofVisit.add(new TickRow(
                            ofVisit.size() + 1,
                            tick,
                            wheels.get(tick.wheelTag()),
                            Objects.requireNonNull(people.get(tick.person()), tick.person())));
                });
        return ticks;
    }

    /** What to do with one row. */
    private interface RowTaker {
        void take(ResultSet row) throws SQLException;
    }

    private static void query(Handle handle, String sql, String argument, RowTaker taker) {
        handle.select(sql, argument)
                .map((row, context) -> {
                    taker.take(row);
                    return row.getRow();
                })
                .forEach(row -> {});
    }
}
