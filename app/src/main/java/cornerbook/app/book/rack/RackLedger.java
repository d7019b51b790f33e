package cornerbook.app.book.rack;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.Place;
import cornerbook.core.store.Rack;
import cornerbook.core.store.StoreMap;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** The racks of the store. One is changed and taken down by what is added to it; how it stood before stays. */
public final class RackLedger {
    private static final String STANDING =
            "select * from store_rack as named where stands = 1 and turn = (select max(turn) from store_rack as later where later.rack_id = named.rack_id)";

    private final Transactions store;

    public RackLedger(Transactions store) {
        this.store = store;
    }

    /** Those that stand, by room, in the order in which they were named. */
    public List<KeptRack> list() {
        return store.read(RackLedger::list);
    }

    /** All places of the racks that stand. */
    public StoreMap map() {
        return store.read(RackLedger::map);
    }

    static List<KeptRack> list(Handle handle) {
        return handle.select(
                        STANDING
                                + " order by room, (select made_at from store_rack as first where first.rack_id = named.rack_id and first.turn = 0), rack_id")
                .map((row, context) -> read(row))
                .list();
    }

    static StoreMap map(Handle handle) {
        return StoreMap.of(list(handle).stream().map(KeptRack::rack).toList());
    }

    /**
     * A new rack; sent again it counts once.
     *
     * @throws BookException when one of its places is called as another rack's
     */
    public Arrival name(String id, Rack rack, By by) {
        return store.write(handle -> {
            if (isKept(handle, id)) {
                return Arrival.ALREADY;
            }
            add(handle, id, new KeptRack(id, 0, rack), true, by);
            return Arrival.STORED;
        });
    }

    /**
     * A rack is named or placed otherwise.
     *
     * @param entryId sent again it counts once
     * @param seenTurn that the person saw
     * @throws BookException when there is none, somebody changed it since, a set would lie at a place that is no more, or another
     *     rack has a place of that name
     */
    public Arrival change(String entryId, String rackId, int seenTurn, Rack rack, By by) {
        return store.write(handle -> {
            if (isKept(handle, entryId)) {
                return Arrival.ALREADY;
            }
            var before = get(handle, rackId, seenTurn);
            refuseLying(handle, before.rack(), rack.places());
            add(handle, entryId, new KeptRack(rackId, seenTurn + 1, rack), true, by);
            return Arrival.STORED;
        });
    }

    /**
     * A rack is no more.
     *
     * @throws BookException when there is none, somebody changed it since, or a set lies there
     */
    public Arrival takeDown(String entryId, String rackId, int seenTurn, By by) {
        return store.write(handle -> {
            if (isKept(handle, entryId)) {
                return Arrival.ALREADY;
            }
            var before = get(handle, rackId, seenTurn);
            refuseLying(handle, before.rack(), List.of());
            add(handle, entryId, new KeptRack(rackId, seenTurn + 1, before.rack()), false, by);
            return Arrival.STORED;
        });
    }

    private static boolean isKept(Handle handle, String id) {
        return handle.select("select 1 from store_rack where id = ?", id)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    private static KeptRack get(Handle handle, String rackId, int seenTurn) {
        var rack = list(handle).stream()
                .filter(each -> each.id().equals(rackId))
                .findFirst()
                .orElseThrow(() -> new BookException(new RackSaid.NoRack()));
        if (rack.turn() != seenTurn) {
            throw new BookException(new RackSaid.RackChanged());
        }
        return rack;
    }

    private static void refuseLying(Handle handle, Rack before, List<Place> after) {
        Set<String> stay = after.stream().map(Place::name).map(StoreMap::key).collect(Collectors.toSet());
        var lying = StockRows.all(handle).stream().filter(KeptSet::lies).toList();
        for (var place : before.places()) {
            int sets = (int) lying.stream().filter(set -> set.liesAt(place)).count();
            if (sets > 0 && !stay.contains(StoreMap.key(place.name()))) {
                throw new BookException(new RackSaid.SetsLieThere(sets, place.name()));
            }
        }
    }

    private static void add(Handle handle, String entryId, KeptRack kept, boolean stands, By by) {
        var rack = kept.rack();
        if (stands) {
            var others = StoreMap.of(list(handle).stream()
                    .filter(each -> !each.id().equals(kept.id()))
                    .map(KeptRack::rack)
                    .toList());
            rack.places().stream()
                    .map(Place::name)
                    .filter(name -> others.find(name).isPresent())
                    .findFirst()
                    .ifPresent(name -> {
                        throw new BookException(new RackSaid.NameTaken(name));
                    });
        }
        new TableRow("store_rack")
                .set("id", entryId)
                .set("rack_id", kept.id())
                .set("turn", kept.turn())
                .set("room", rack.room())
                .set("pattern", rack.naming().pattern())
                .set("shelves", rack.naming().shelves())
                .set("places", rack.naming().places())
                .set("capacity", rack.capacity())
                .set("x_m", rack.first().xM())
                .set("y_m", rack.first().yM())
                .set("along", rack.along())
                .set("width_m", rack.placeWidthM())
                .set("stands", stands)
                .set("person", by.person())
                .set("made_at", by.at())
                .insert(handle);
    }

    private static KeptRack read(ResultSet row) throws SQLException {
        return new KeptRack(
                row.getString("rack_id"),
                row.getInt("turn"),
                new Rack(
                        row.getString("room"),
                        new Naming(row.getString("pattern"), row.getInt("shelves"), row.getInt("places")),
                        new FloorPoint(row.getDouble("x_m"), row.getDouble("y_m")),
                        Rack.Along.valueOf(row.getString("along")),
                        row.getDouble("width_m"),
                        row.getInt("capacity")));
    }
}
