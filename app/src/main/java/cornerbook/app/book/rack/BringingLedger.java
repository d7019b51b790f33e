package cornerbook.app.book.rack;

import cornerbook.app.book.rack.SetElsewhere.Brought;
import cornerbook.app.book.rack.SetElsewhere.Step;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.store.OnTheWay;
import cornerbook.core.store.StoreMap;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Which rooms of the store are elsewhere, and which sets are brought from there. What was said before stays. */
public final class BringingLedger {
    private static final int DAYS_AHEAD = 366;

    private final Transactions store;

    public BringingLedger(Transactions store) {
        this.store = store;
    }

    /** The rooms that are elsewhere, by the name of the room as {@link StoreMap#key} compares it. */
    public Map<String, Bringing> listRooms() {
        return store.read(BringingLedger::rooms);
    }

    private static Map<String, Bringing> rooms(Handle handle) {
        return handle
                .select(
                        "select * from store_room where elsewhere = 1 and turn = (select max(turn) from store_room as later where later.room_key = store_room.room_key)")
                .map((row, context) -> Map.entry(row.getString("room_key"), bringing(row)))
                .stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static Bringing bringing(ResultSet row) throws SQLException {
        var lastHour = row.getString("last_hour");
        return new Bringing(
                new OnTheWay(row.getInt("working_days")), lastHour == null ? null : LocalTime.parse(lastHour));
    }

    /**
     * What somebody says of a room; sent again it counts once.
     *
     * @param bringing null for a room that is here
     * @throws BookException when no rack stands in such a room
     */
    public Arrival say(String id, String room, @Nullable Bringing bringing, By by) {
        return store.write(handle -> {
            var key = StoreMap.key(room);
            if (RackLedger.list(handle).stream()
                    .noneMatch(kept -> StoreMap.key(kept.rack().room()).equals(key))) {
                throw new BookException(new RackSaid.NoSuchRoom(room));
            }
            boolean stored = new TableRow("store_room")
                    .set("id", id)
                    .set("room_key", key)
                    .set("turn", TableRow.count(handle, "store_room where room_key = ?", key))
                    .set("elsewhere", bringing != null)
                    .set(
                            "working_days",
                            bringing == null ? null : bringing.way().workingDays())
                    .set("last_hour", bringing == null ? null : bringing.lastHour())
                    .set("person", by.person())
                    .set("made_at", by.at())
                    .insertOnce(handle);
            return stored ? Arrival.STORED : Arrival.ALREADY;
        });
    }

    /** The sets that lie elsewhere, those here that were not laid anywhere yet among them, by car. */
    public List<SetElsewhere> list() {
        return store.read(handle -> elsewhere(handle, "", List.of()));
    }

    /** Those of one car. */
    public List<SetElsewhere> listOf(String vehicleId) {
        return store.read(handle -> elsewhere(handle, " and wheel_set.vehicle_id = ?", List.of(vehicleId)));
    }

    private static List<SetElsewhere> elsewhere(Handle handle, String which, List<String> values) {
        var rooms = rooms(handle);
        if (rooms.isEmpty()) {
            return List.of();
        }
        var map = RackLedger.map(handle);
        var brought = handle
                .select("""
                        select set_bringing.* from set_bringing
                        where place_in_list = (select max(place_in_list) from set_bringing as later
                            where later.vehicle_id = set_bringing.vehicle_id and later.set_id = set_bringing.set_id)
                            and moves = (select count(*) from set_move where set_move.vehicle_id = set_bringing.vehicle_id and set_move.set_id = set_bringing.set_id)
                        """)
                .map((row, context) -> Map.entry(
                        new KeptSet.Key(row.getString("vehicle_id"), row.getString("set_id")),
                        Map.entry(LocalDate.parse(row.getString("day")), brought(row))))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return StockRows.stored(handle, which, values).stream()
                .filter(KeptSet::lies)
                .flatMap(set -> map.find(Objects.requireNonNull(set.place())).stream()
                        .flatMap(place -> Optional.ofNullable(rooms.get(StoreMap.key(place.room()))).stream()
                                .map(room ->
                                        new SetElsewhere(set, place, room, standing(set, brought.get(set.key()))))))
                .sorted(Comparator.comparing(
                                (SetElsewhere each) -> each.set().owner().vehicleName())
                        .thenComparing(each -> each.set().key().vehicleId())
                        .thenComparing(each -> each.set().key().setId()))
                .toList();
    }

    /** What was said before the car came on the set once more is over. */
    private static @Nullable Brought standing(KeptSet set, Map.@Nullable Entry<LocalDate, Brought> last) {
        var cameOn = set.ran().cameOn();
        return last == null
                        || last.getValue().step() == Step.NOT_ASKED
                        || (cameOn != null && cameOn.isAfter(last.getKey()))
                ? null
                : last.getValue();
    }

    private static Brought brought(ResultSet row) throws SQLException {
        var comesOn = row.getString("comes_on");
        return new Brought(
                Step.valueOf(row.getString("step")),
                comesOn == null ? null : LocalDate.parse(comesOn),
                new By(row.getString("person"), Instant.parse(row.getString("made_at"))));
    }

    /**
     * A set was asked for; sent again it counts once.
     *
     * @param comesOn the day on which it is to be here
     * @param today at the shop
     * @throws BookException when it does not lie elsewhere, or that day is over or far
     */
    public Arrival ask(String id, KeptSet.Key key, LocalDate comesOn, By by, LocalDate today) {
        if (comesOn.isBefore(today) || comesOn.isAfter(today.plusDays(DAYS_AHEAD))) {
            throw new BookException(new RackSaid.NoDayToCome(today, today.plusDays(DAYS_AHEAD)));
        }
        return store.write(handle -> add(handle, id, key, Step.ASKED, comesOn, by, today));
    }

    /**
     * A set is not asked for after all.
     *
     * @throws BookException when it does not lie elsewhere
     */
    public Arrival askNoMore(String id, KeptSet.Key key, By by, LocalDate today) {
        return store.write(handle -> add(handle, id, key, Step.NOT_ASKED, null, by, today));
    }

    /**
     * A set came.
     *
     * @param placeName where it was laid; empty while it lies nowhere yet
     * @throws BookException when it does not lie elsewhere, or cannot be laid there
     */
    public Arrival comeIn(String id, KeptSet.Key key, String placeName, By by, LocalDate today) {
        return store.write(handle -> {
            if (placeName.isEmpty()) {
                return add(handle, id, key, Step.HERE, null, by, today);
            }
            var tag = StockRows.find(handle, key)
                    .flatMap(set -> set.tags().stream().findFirst())
                    .orElseThrow(() -> new BookException(new RackSaid.NoSet()));
            return new StockLedger(Transactions.within(handle)).put(id, tag, placeName, by, today);
        });
    }

    private static Arrival add(
            Handle handle, String id, KeptSet.Key key, Step step, @Nullable LocalDate comesOn, By by, LocalDate today) {
        if (TableRow.count(handle, "set_bringing where id = ?", id) > 0) {
            return Arrival.ALREADY;
        }
        if (elsewhere(handle, " and wheel_set.vehicle_id = ?", List.of(key.vehicleId())).stream()
                .noneMatch(each -> each.set().key().equals(key))) {
            throw new BookException(new RackSaid.NotElsewhere());
        }
        new TableRow("set_bringing")
                .set("id", id)
                .set("vehicle_id", key.vehicleId())
                .set("set_id", key.setId())
                .set("place_in_list", count(handle, "set_bringing", key))
                .set("step", step)
                .set("moves", count(handle, "set_move", key))
                .set("day", today)
                .set("comes_on", comesOn)
                .set("person", by.person())
                .set("made_at", by.at())
                .insert(handle);
        return Arrival.STORED;
    }

    private static int count(Handle handle, String table, KeptSet.Key key) {
        return handle.select(
                        "select count(*) from " + table + " where vehicle_id = ? and set_id = ?",
                        key.vehicleId(),
                        key.setId())
                .mapTo(Integer.class)
                .one();
    }
}
