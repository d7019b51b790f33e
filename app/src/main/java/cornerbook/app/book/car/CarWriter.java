package cornerbook.app.book.car;

import cornerbook.app.book.store.TableRow;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Writes rows of a car and its visits. Every method runs inside the caller's transaction. */
public final class CarWriter {
    private final Handle handle;

    public CarWriter(Handle handle) {
        this.handle = handle;
    }

    /** A new car with all its visits; gives its customer when the book knew other details of it. */
    public Optional<Customer> writeCar(CarHistory history) {
        var changed = write(history.customer());
        write(history.vehicle(), history.customer().id());
        for (int i = 0; i < history.sets().size(); i++) {
            write(history.vehicle().id(), history.sets().get(i), i);
        }
        writeVisits(history.vehicle().id(), history.visits());
        return changed;
    }

    /** New visits of a car, together: statements are prepared once for all of them. */
    public void writeVisits(String vehicleId, List<Visit> visits) {
        if (visits.isEmpty()) {
            return;
        }
        var rows = handle.prepareBatch(
                "insert into visit (id, vehicle_id, visit_date, odometer_km, technician, notes, next_visit_due) values (?, ?, ?, ?, ?, ?, ?)");
        var lines = handle.prepareBatch("insert into work_line (visit_id, place_in_list, line) values (?, ?, ?)");
        var positions = preparePositions();
        var readings = prepareReadings();
        for (var visit : visits) {
            rows.add(
                    visit.id(),
                    vehicleId,
                    visit.date().toString(),
                    visit.odometerKm(),
                    visit.card().technician(),
                    visit.card().notes(),
                    text(visit.card().nextVisitDue()));
            for (int i = 0; i < visit.card().workDone().size(); i++) {
                lines.add(visit.id(), i, visit.card().workDone().get(i));
            }
            addPositions(positions, visit);
            add(readings, visit.id(), 0, visit.readings());
        }
        List.of(rows, lines, positions, readings).forEach(PreparedBatch::execute);
        visits.forEach(
                visit -> UsedToolLedger.write(handle, visit.id(), visit.card().tools()));
        countChange(visits.getFirst().id());
    }

    /** The wheels that a car came and left on, in the place of what stood there. */
    public void replaceWheels(Visit visit) {
        handle.execute("delete from visit_wheel where visit_id = ?", visit.id());
        var positions = preparePositions();
        addPositions(positions, visit);
        positions.execute();
        countChange(visit.id());
    }

    public void countChange(String visitId) {
        handle.execute(
                "update vehicle set revision = revision + 1 where id = (select vehicle_id from visit where id = ?)",
                visitId);
    }

    /** Appends readings, behind those that were moved to another car too. */
    public void writeReadings(String visitId, List<Reading> readings) {
        if (readings.isEmpty()) {
            return;
        }
        countChange(visitId);
        int place = handle.select("select count(*) from reading where visit_id = ?", visitId)
                .mapTo(Integer.class)
                .one();
        var batch = prepareReadings();
        add(batch, visitId, place, readings);
        batch.execute();
    }

    private PreparedBatch prepareReadings() {
        return handle.prepareBatch(
                "insert into reading (id, visit_id, place_in_list, measure, corner, wheel_tag, spot, amount, as_written, corrects, reason) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    }

    private static void add(PreparedBatch batch, String visitId, int firstPlace, List<Reading> readings) {
        int place = firstPlace;
        for (var reading : readings) {
            batch.add(
                    reading.id(),
                    visitId,
                    place++,
                    reading.measure().name(),
                    text(reading.corner()),
                    reading.wheelTag(),
                    text(reading.spot()),
                    reading.value(),
                    reading.asWritten(),
                    reading.corrects(),
                    reading.reason());
        }
    }

    private PreparedBatch preparePositions() {
        return handle.prepareBatch("insert into visit_wheel (visit_id, moment, corner, wheel_tag) values (?, ?, ?, ?)");
    }

    private static void addPositions(PreparedBatch positions, Visit visit) {
        visit.arrivedOn().forEach((corner, tag) -> positions.add(visit.id(), "ARRIVED", corner.name(), tag));
        visit.leftOn().forEach((corner, tag) -> positions.add(visit.id(), "LEFT", corner.name(), tag));
    }

    private Optional<Customer> write(Customer customer) {
        var before = find(customer.id());
        handle.execute(
                "insert into customer (id, name, phone, email, language) values (?, ?, ?, ?, ?) on conflict (id) do update set name = excluded.name, phone = coalesce(excluded.phone, customer.phone), email = coalesce(excluded.email, customer.email), language = coalesce(excluded.language, customer.language)",
                customer.id(),
                customer.name(),
                customer.phone(),
                customer.email(),
                customer.language());
        return before.flatMap(known -> find(customer.id()).filter(now -> !now.equals(known)));
    }

    private Optional<Customer> find(String customerId) {
        return handle.select("select * from customer where id = ?", customerId)
                .map((row, context) -> CarReader.customer(row))
                .findFirst();
    }

    private void write(Vehicle vehicle, String customerId) {
        VehicleRows.vehicle(vehicle).set("customer_id", customerId).insert(handle);
        for (var axle : Axle.values()) {
            VehicleRows.axle(vehicle.id(), axle, vehicle.axle(axle)).insert(handle);
        }
        VehicleRows.liftPoints(vehicle).forEach(row -> row.insert(handle));
    }

    void write(String vehicleId, WheelSet set, int place) {
        new TableRow("wheel_set")
                .set("vehicle_id", vehicleId)
                .set("id", set.id())
                .set("place_in_list", place)
                .set("season", set.season())
                .set("store_place", set.storePlace())
                .insert(handle);
        for (int i = 0; i < set.wheels().size(); i++) {
            VehicleRows.wheel(set.wheels().get(i))
                    .set("vehicle_id", vehicleId)
                    .set("set_id", set.id())
                    .set("place_in_list", i)
                    .insert(handle);
        }
    }

    static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }
}
