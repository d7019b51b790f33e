package cornerbook.app.book.car;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.verdict.KeptVerdict;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Axle;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What each car is, with its owner, its wheels and its history. */
public final class CarLedger {
    private static final int VIN_OF_KIND = 8;
    /** So many are looked at; a shop has few kinds that many customers drive. */
    private static final int MOST_ALIKE = 50;

    private final Transactions store;

    public CarLedger(Transactions store) {
        this.store = store;
    }

    /** The ids of all cars, those that cannot be read among them, in the order in which cars are listed. */
    public List<String> listIds() {
        return store.read(handle -> handle.select("select id from vehicle order by name, id")
                .mapTo(String.class)
                .list());
    }

    /** All cars by name. */
    public List<VehicleSummary> list() {
        return store.read(handle -> handle.select("select " + VehicleSummary.COLUMNS
                        + " from vehicle join customer on customer.id = vehicle.customer_id" + KeptVerdict.JOIN
                        + "order by vehicle.name, vehicle.id")
                .map((row, context) -> VehicleSummary.of(row))
                .list());
    }

    /** The ids of those with a high-voltage battery, or of which nobody has said what drives them. */
    public Set<String> listThatMayHaveHighVoltage() {
        return store.read(handle -> handle.select(
                        "select id from vehicle where electric = 1 or hybrid = 1 or (electric is null and hybrid is null)")
                .mapTo(String.class)
                .set());
    }

    public int count() {
        return store.read(handle -> handle.select("select count(*) from vehicle")
                .mapTo(Integer.class)
                .one());
    }

    /** The id of any car that does not begin so. */
    public Optional<String> findIdNotBeginning(String letters) {
        return store.read(handle -> handle.select("select id from vehicle where id not like ? limit 1", letters + "%")
                .mapTo(String.class)
                .findFirst());
    }

    /** Every car with all its visits, read at one go, by name. */
    public List<CarHistory> listHistories() {
        return store.read(handle -> {
            var reader = new CarReader(handle);
            return handle.select("select id from vehicle order by name").mapTo(String.class).list().stream()
                    .flatMap(id -> reader.find(id).stream())
                    .toList();
        });
    }

    /** The cars of which a set lies in the store, by name, one after the other as they are asked for. */
    public Stream<CarHistory> readStored() {
        return store
                .read(handle -> handle.select(
                                "select id from vehicle where exists (select 1 from wheel_set where wheel_set.vehicle_id = vehicle.id and wheel_set.store_place is not null) order by name")
                        .mapTo(String.class)
                        .list())
                .stream()
                .flatMap(id -> find(id).stream());
    }

    public Optional<CarHistory> find(String vehicleId) {
        return store.read(handle -> new CarReader(handle).find(vehicleId));
    }

    /**
     * Cars that may be of the same kind, those whose brakes are known, latest first: whose name begins with the same word, or whose
     * VIN begins with the same symbols.
     *
     * @param vin null when it is not known
     */
    public List<Vehicle> listNamedLike(String name, @Nullable String vin) {
        var begins = vin == null ? "" : vin.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
        return store.read(handle -> {
            var reader = new CarReader(handle);
            return handle
                    .select(
                            "select id from vehicle where (lower(name) like ? or (? <> '' and lower(replace(replace(vin, ' ', ''), '-', '')) like ?)) and exists (select 1 from vehicle_axle where vehicle_id = vehicle.id and (caliper is not null or drum_new_mm is not null)) order by revision desc, id limit ?",
                            name.strip().toLowerCase(Locale.ROOT).replaceFirst("[^\\p{L}\\p{N}].*", "") + "%",
                            begins,
                            begins.substring(0, Math.min(VIN_OF_KIND, begins.length())) + "%",
                            MOST_ALIKE)
                    .mapTo(String.class)
                    .list()
                    .stream()
                    .flatMap(id -> reader.find(id).stream())
                    .map(CarHistory::vehicle)
                    .toList();
        });
    }

    /** What cars are called, each kind once: what stands before the comma of a name. */
    public List<String> listKinds() {
        return store.read(handle ->
                handle.select("select distinct name from vehicle where name <> plate").mapTo(String.class).stream()
                        .map(name -> name.replaceFirst(",.*", ""))
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** Whose law most cars are judged by; empty while there is no car. */
    public Optional<String> findUsualPlace() {
        return store.read(handle -> handle.select(
                        "select jurisdiction from vehicle group by jurisdiction order by count(*) desc, jurisdiction limit 1")
                .mapTo(String.class)
                .findFirst());
    }

    /** The car of a visit. */
    public Optional<CarHistory> findOfVisit(String visitId) {
        return findBy("select vehicle_id from visit where id = ? and cancelled = 0", visitId);
    }

    /**
     * The car of a visit.
     *
     * @throws BookException when there is no such visit
     */
    public CarHistory getOfVisit(String visitId) {
        return findOfVisit(visitId).orElseThrow(() -> new BookException(new CarSaid.NoVisit(visitId)));
    }

    /**
     * Refuses a visit that is not in the book, or was cancelled.
     *
     * @throws BookException when there is no such visit
     */
    public void requireVisit(String visitId) {
        if (store.read(handle -> handle.select("select id from visit where id = ? and cancelled = 0", visitId)
                .mapTo(String.class)
                .findFirst()
                .isEmpty())) {
            throw new BookException(new CarSaid.NoVisit(visitId));
        }
    }

    /** The car that a wheel belongs to. */
    public Optional<CarHistory> findOfWheel(String tag) {
        return findBy("select vehicle_id from wheel where tag = ?", tag);
    }

    private Optional<CarHistory> findBy(String query, String id) {
        return store.read(handle ->
                handle.select(query, id).mapTo(String.class).findFirst().flatMap(new CarReader(handle)::find));
    }

    /** Cold pressure on each axle by the placard of the car of a visit, kPa, gauge; without an axle whose placard nobody has read. */
    public Map<Axle, Double> placardsKpa(String visitId) {
        return store.read(handle -> handle
                .select(
                        "select vehicle_axle.axle, vehicle_axle.placard_pressure_kpa from vehicle_axle join visit on visit.vehicle_id = vehicle_axle.vehicle_id where visit.id = ? and vehicle_axle.placard_pressure_kpa is not null",
                        visitId)
                .map((row, context) ->
                        Map.entry(Axle.valueOf(row.getString("axle")), row.getDouble("placard_pressure_kpa")))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    /** How often a car's history or data has changed; empty when there is no such car. */
    public Optional<Long> findRevision(String vehicleId) {
        return store.read(handle -> handle.select("select revision from vehicle where id = ?", vehicleId)
                .mapTo(Long.class)
                .findFirst());
    }

    /** What was put right of a car's wheels, earliest first. */
    public List<WheelChange> listWheelChanges(String vehicleId) {
        return store.read(handle -> new WheelChanges(handle, vehicleId).list());
    }

    /**
     * What the car, its owner and its wheels are now, and wheel sets that are new; visits stay, and of a wheel that is put
     * right the book keeps what stood there.
     *
     * @param day on which it is changed
     * @param seenRevision the revision that the change was made from
     * @throws BookException when somebody else has changed the car since
     */
    public void change(CarHistory changed, long seenRevision, LocalDate day) {
        store.write(handle -> {
            new CarChange(handle).apply(changed, seenRevision, day);
            return changed;
        });
    }
}
