package cornerbook.app.book.rack;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.store.Place;
import cornerbook.core.store.StoreMap;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads sets with where they lie. Runs inside the caller's transaction. */
final class StockRows {
    private static final Pattern NUMBER = Pattern.compile("\\d+");
    /** Digits; a longer number stands where its first ones put it. */
    private static final int LONGEST_NUMBER = 9;

    private static final String OF_SET = "wheel.vehicle_id = wheel_set.vehicle_id and wheel.set_id = wheel_set.id";

    private static final String LAST_MOVE =
            " set_move.place_in_list = (select max(later.place_in_list) from set_move as later where later.vehicle_id = set_move.vehicle_id and later.set_id = set_move.set_id)";

    /** The day at the shop; that of the moment where the book kept none. */
    private static final String MOVED_ON = "coalesce(set_move.moved_on, substr(set_move.made_at, 1, 10))";

    /** A set that was put away since the car came on it is off the car, though nobody has recorded yet on what it leaves. */
    static final String SELECT = """
            select wheel_set.vehicle_id, wheel_set.id as set_id, wheel_set.season, wheel_set.store_place,
                vehicle.name as vehicle_name, vehicle.plate, customer.id as customer_id, customer.name as customer_name, customer.phone,
                (
                    select max(case visit_wheel.moment when 'LEFT' then 'LEFT' else 'CAME' end) from wheel join visit_wheel on visit_wheel.wheel_tag = wheel.tag join visit on visit.id = visit_wheel.visit_id
                    where %1$s and visit.id = %2$s
                        and visit_wheel.moment = case when exists (select 1 from visit_wheel as gone where gone.visit_id = visit.id and gone.moment = 'LEFT') then 'LEFT' else 'ARRIVED' end
                        and not (set_move.move is not null and set_move.move = 'PUT'
                            and (%4$s > visit.visit_date
                                or visit_wheel.moment = 'ARRIVED' and %4$s = visit.visit_date)))
                    as on_car,
                (select max(visit.visit_date) from visit join visit_wheel on visit_wheel.visit_id = visit.id join wheel on wheel.tag = visit_wheel.wheel_tag
                    where visit.vehicle_id = wheel_set.vehicle_id and visit.cancelled = 0 and visit_wheel.moment = 'ARRIVED' and %1$s) as came_on,
                set_move.move, set_move.from_place, set_move.to_place, set_move.visit_id, set_move.moved_on, set_move.person, set_move.made_at
            from wheel_set
                join vehicle on vehicle.id = wheel_set.vehicle_id
                join customer on customer.id = vehicle.customer_id
                left join set_move on set_move.vehicle_id = wheel_set.vehicle_id and set_move.set_id = wheel_set.id and %3$s
            """.formatted(OF_SET, latestVisit("wheel_set.vehicle_id"), LAST_MOVE, MOVED_ON);

    private StockRows() {}

    /**
     * Selects the id of a car's latest visit.
     *
     * @param vehicle the column with the car's id
     */
    static String latestVisit(String vehicle) {
        return "(select latest.id from visit as latest where latest.vehicle_id = " + vehicle
                + " and latest.cancelled = 0 order by latest.visit_date desc, latest.odometer_km desc, latest.id desc limit 1)";
    }

    /** Every set, by place as people count them, then by car. */
    static List<KeptSet> all(Handle handle) {
        var tags = tags(handle, "", List.of());
        return handle
                .select(SELECT + " order by vehicle.name, vehicle.id, wheel_set.id")
                .map((row, context) -> read(row, tags.getOrDefault(key(row), List.of())))
                .stream()
                .sorted(Comparator.comparing(set -> counted(Objects.requireNonNullElse(set.place(), ""))))
                .toList();
    }

    /** With its numbers made equally long: bay 8 comes before bay 11. */
    private static String counted(String place) {
        return NUMBER.matcher(place)
                .replaceAll(number ->
                        "0".repeat(Math.max(0, LONGEST_NUMBER - number.group().length())) + number.group());
    }

    /**
     * Those of which a place is written down, in no order.
     *
     * @param which further condition, beginning with " and"; empty for none
     */
    static List<KeptSet> stored(Handle handle, String which, List<String> values) {
        var tags = tags(
                handle,
                " join wheel_set on wheel_set.vehicle_id = wheel.vehicle_id and wheel_set.id = wheel.set_id where wheel_set.store_place is not null"
                        + which,
                values);
        return handle.select(SELECT + " where wheel_set.store_place is not null" + which, values.toArray())
                .map((row, context) -> read(row, tags.getOrDefault(key(row), List.of())))
                .list();
    }

    private static Map<KeptSet.Key, List<String>> tags(Handle handle, String which, List<String> values) {
        var tags = new HashMap<KeptSet.Key, List<String>>();
        handle.select(
                        "select wheel.vehicle_id, wheel.set_id, wheel.tag from wheel" + which
                                + " order by wheel.vehicle_id, wheel.set_id, wheel.place_in_list",
                        values.toArray())
                .map((row, context) -> Map.entry(key(row), row.getString("tag")))
                .forEach(each -> tags.computeIfAbsent(each.getKey(), key -> new ArrayList<>())
                        .add(each.getValue()));
        return tags;
    }

    /**
     * The sets that lie at a place, by car. Names of places are compared as people write them, which no database does alike, so
     * all that sets bear are read, and then the sets of those that are this place's.
     */
    static List<KeptSet> lyingAt(Handle handle, Place place) {
        return handle
                .select("select distinct store_place from wheel_set where store_place is not null")
                .mapTo(String.class)
                .filter(name -> StoreMap.key(name).equals(StoreMap.key(place.name())))
                .list()
                .stream()
                .flatMap(name -> handle
                        .select(
                                "select wheel_set.vehicle_id, wheel_set.id as set_id from wheel_set join vehicle on vehicle.id = vehicle_id where store_place = ? order by vehicle.name, vehicle.id, wheel_set.id",
                                name)
                        .map((row, context) -> key(row))
                        .list()
                        .stream())
                .flatMap(key -> find(handle, key).stream())
                .filter(KeptSet::lies)
                .toList();
    }

    /** The set of a wheel. */
    static Optional<KeptSet> find(Handle handle, String tag) {
        return handle.select("select vehicle_id, set_id, tag from wheel where tag = ?", tag)
                .map((row, context) -> key(row))
                .findFirst()
                .flatMap(key -> find(handle, key));
    }

    static Optional<KeptSet> find(Handle handle, KeptSet.Key key) {
        var tags = handle.select(
                        "select tag from wheel where vehicle_id = ? and set_id = ? order by place_in_list",
                        key.vehicleId(),
                        key.setId())
                .mapTo(String.class)
                .list();
        return handle.select(
                        SELECT + " where wheel_set.vehicle_id = ? and wheel_set.id = ?", key.vehicleId(), key.setId())
                .map((row, context) -> read(row, tags))
                .findFirst();
    }

    private static KeptSet.Key key(ResultSet row) throws SQLException {
        return new KeptSet.Key(row.getString("vehicle_id"), row.getString("set_id"));
    }

    private static KeptSet read(ResultSet row, List<String> tags) throws SQLException {
        var on = row.getString("on_car");
        var cameOn = row.getString("came_on");
        return new KeptSet(
                key(row),
                SeasonKind.valueOf(row.getString("season")),
                tags,
                row.getString("store_place"),
                new KeptSet.Owner(
                        row.getString("vehicle_name"),
                        row.getString("plate"),
                        row.getString("customer_id"),
                        row.getString("customer_name"),
                        row.getString("phone")),
                new KeptSet.Ran(
                        on == null ? KeptSet.On.OFF : KeptSet.On.valueOf(on),
                        cameOn == null ? null : LocalDate.parse(cameOn)),
                move(row));
    }

    /** The move that a row has beside other columns; null when it has none. */
    static @Nullable SetMove move(ResultSet row) throws SQLException {
        var kind = row.getString("move");
        var day = row.getString("moved_on");
        return kind == null
                ? null
                : new SetMove(
                        SetMove.Kind.valueOf(kind),
                        row.getString("from_place"),
                        row.getString("to_place"),
                        row.getString("visit_id"),
                        day == null ? null : LocalDate.parse(day),
                        new By(row.getString("person"), Instant.parse(row.getString("made_at"))));
    }
}
