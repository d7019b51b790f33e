package cornerbook.app.book.rack;

import cornerbook.app.book.car.WheelChanges;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.visit.CallAnswers;
import cornerbook.core.store.Place;
import cornerbook.core.store.StoreMap;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Which set lies where, and how it came there. */
public final class StockLedger {
    /** What customers are called about. */
    private static final String STORED_SET = "STORED_SET";

    private static final String CALLS = "select visit.vehicle_id, visit.id as visit_id, "
            + CallAnswers.columns("visit.id", "'" + STORED_SET + "'")
            + " from visit where visit.id = " + StockRows.latestVisit("visit.vehicle_id");

    private final Transactions store;

    public StockLedger(Transactions store) {
        this.store = store;
    }

    /** Every set that the book has, on a car or off, by place. */
    public List<KeptSet> list() {
        return store.read(StockRows::all);
    }

    /** The set that a wheel is of. */
    public Optional<KeptSet> find(String tag) {
        return store.read(handle -> StockRows.find(handle, tag));
    }

    public Optional<KeptSet> find(KeptSet.Key key) {
        return store.read(handle -> StockRows.find(handle, key));
    }

    /** The sets that lie at a place, by car. */
    public List<KeptSet> listLyingAt(Place place) {
        return store.read(handle -> StockRows.lyingAt(handle, place));
    }

    /** What was done with a set, the latest first. */
    public List<SetMove> listMoves(KeptSet.Key key) {
        return store.read(handle -> handle
                .select(
                        "select * from set_move where vehicle_id = ? and set_id = ? order by place_in_list desc",
                        key.vehicleId(),
                        key.setId())
                .map((row, context) -> Optional.ofNullable(StockRows.move(row)))
                .stream()
                .flatMap(Optional::stream)
                .toList());
    }

    /**
     * A set was laid at a place; sent again it counts once.
     *
     * @param tag of any of its wheels
     * @param day at the shop
     * @throws BookException when there is no such wheel or place, the place is full, the set lies there, or it is on the car
     */
    public Arrival put(String id, String tag, String placeName, By by, LocalDate day) {
        return store.write(handle -> {
            if (isKept(handle, id)) {
                return Arrival.ALREADY;
            }
            var set = get(handle, tag);
            var place = RackLedger.map(handle)
                    .find(placeName)
                    .orElseThrow(() -> new BookException(new RackSaid.NoPlace(placeName)));
            put(handle, id, set, place, by, day);
            return Arrival.STORED;
        });
    }

    static void put(Handle handle, String id, KeptSet set, Place place, By by, LocalDate day) {
        if (set.ran().on() == KeptSet.On.LEFT) {
            throw new BookException(
                    new RackSaid.IsOnCar(set.owner().vehicleName(), set.tags().getFirst()));
        }
        if (set.liesAt(place)) {
            throw new BookException(new RackSaid.LiesThere(set.tags().getFirst(), place.name()));
        }
        var lying = StockRows.lyingAt(handle, place);
        if (lying.size() >= place.capacity()) {
            throw new BookException(new RackSaid.PlaceFull(
                    place.name(),
                    lying.stream()
                            .map(each -> each.owner().vehicleName())
                            .reduce((first, second) -> first + ", " + second)
                            .orElse("")));
        }
        add(handle, id, set, SetMove.Kind.PUT, place.name(), null, by, day);
    }

    /**
     * A set was fetched for the car of a visit; another wheel of it scanned for the same visit adds nothing.
     *
     * @param day at the shop
     * @throws BookException when there is no such wheel or visit, or the set is of another car: it stays
     */
    public Arrival takeToCar(String id, String tag, String visitId, By by, LocalDate day) {
        return store.write(handle -> {
            if (isKept(handle, id)) {
                return Arrival.ALREADY;
            }
            var set = get(handle, tag);
            var car = handle.select(
                            "select vehicle.id, vehicle.name, vehicle.plate from visit join vehicle on vehicle.id = visit.vehicle_id where visit.id = ? and visit.cancelled = 0",
                            visitId)
                    .map((row, context) -> List.of(row.getString("id"), row.getString("name"), row.getString("plate")))
                    .findFirst()
                    .orElseThrow(() -> new BookException(new RackSaid.NoVisit()));
            if (!car.getFirst().equals(set.key().vehicleId())) {
                throw new BookException(new RackSaid.WrongCar(
                        tag, set.owner().vehicleName(), set.owner().plate(), car.get(1), car.getLast()));
            }
            refuseOnCar(set);
            if (wentOut(set, SetMove.Kind.OUT_TO_CAR, visitId)) {
                return Arrival.ALREADY;
            }
            add(handle, id, set, SetMove.Kind.OUT_TO_CAR, null, visitId, by, day);
            return Arrival.STORED;
        });
    }

    /**
     * A set was handed to its customer, to be kept elsewhere; another wheel of it adds nothing.
     *
     * @param day at the shop
     * @throws BookException when there is no such wheel, or it is on the car
     */
    public Arrival handOut(String id, String tag, By by, LocalDate day) {
        return store.write(handle -> {
            if (isKept(handle, id)) {
                return Arrival.ALREADY;
            }
            var set = get(handle, tag);
            refuseOnCar(set);
            if (wentOut(set, SetMove.Kind.OUT_TO_CUSTOMER, null)) {
                return Arrival.ALREADY;
            }
            add(handle, id, set, SetMove.Kind.OUT_TO_CUSTOMER, null, null, by, day);
            return Arrival.STORED;
        });
    }

    /** Who was called about sets that lie in the store, by the car's id; of each car whose latest visit is known. */
    public Map<String, CalledAbout> listCalls() {
        return store.read(handle -> handle
                .select(CALLS)
                .map((row, context) ->
                        new CalledAbout(row.getString("vehicle_id"), row.getString("visit_id"), CallAnswers.last(row)))
                .stream()
                .collect(Collectors.toMap(CalledAbout::vehicleId, each -> each)));
    }

    /**
     * What came of calling a customer about a set that lies in the store.
     *
     * @param visitId the latest visit of the car
     * @throws BookException when there is no such visit
     */
    public Arrival answer(String id, String visitId, CallAnswer answer) {
        return store.write(handle -> {
            if (handle.select("select 1 from visit where id = ? and cancelled = 0", visitId)
                    .mapTo(Integer.class)
                    .findFirst()
                    .isEmpty()) {
                throw new BookException(new RackSaid.NoVisit());
            }
            return CallAnswers.add(handle, id, visitId, STORED_SET, answer);
        });
    }

    /** Another wheel of a set that was carried out just so: where it lay stays known. */
    private static boolean wentOut(KeptSet set, SetMove.Kind kind, @Nullable String visitId) {
        var last = set.last();
        return set.isOut() && last != null && last.kind() == kind && Objects.equals(last.visitId(), visitId);
    }

    private static void refuseOnCar(KeptSet set) {
        if (set.ran().onCar()) {
            throw new BookException(
                    new RackSaid.IsOnCar(set.owner().vehicleName(), set.tags().getFirst()));
        }
    }

    private static boolean isKept(Handle handle, String id) {
        return handle.select("select 1 from set_move where id = ?", id)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    private static KeptSet get(Handle handle, String tag) {
        return StockRows.find(handle, tag).orElseThrow(() -> new BookException(new RackSaid.NoWheel(tag)));
    }

    private static void add(
            Handle handle,
            String id,
            KeptSet set,
            SetMove.Kind kind,
            @Nullable String to,
            @Nullable String visitId,
            By by,
            LocalDate day) {
        var key = set.key();
        int next = handle.select(
                        "select coalesce(max(place_in_list), -1) + 1 from set_move where vehicle_id = ? and set_id = ?",
                        key.vehicleId(),
                        key.setId())
                .mapTo(Integer.class)
                .one();
        new TableRow("set_move")
                .set("id", id)
                .set("vehicle_id", key.vehicleId())
                .set("set_id", key.setId())
                .set("place_in_list", next)
                .set("move", kind)
                .set("from_place", set.place())
                .set("to_place", to)
                .set("visit_id", visitId)
                .set("moved_on", day)
                .set("person", by.person())
                .set("made_at", by.at())
                .insert(handle);
        new WheelChanges(handle, key.vehicleId()).lay(key.setId(), to, day);
    }

    /** How many sets lie at each place, by {@link StoreMap#key}. */
    public static Map<String, Integer> lying(List<KeptSet> sets) {
        var lying = new HashMap<String, Integer>();
        sets.stream()
                .filter(KeptSet::lies)
                .forEach(set -> lying.merge(StoreMap.key(String.valueOf(set.place())), 1, Integer::sum));
        return lying;
    }
}
