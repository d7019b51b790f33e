package cornerbook.app.book.car;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.KeptStatements;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.TakenIds;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Writes rows of a car and its visits. Every method runs inside the caller's transaction. */
public final class CarWriter {
    private static final String VISIT =
            "insert into visit (id, vehicle_id, visit_date, odometer_km, technician, notes, next_visit_due) values (?, ?, ?, ?, ?, ?, ?)";

    private static final String WORK_LINE = "insert into work_line (visit_id, place_in_list, line) values (?, ?, ?)";

    private static final String POSITION =
            "insert into visit_wheel (visit_id, moment, corner, wheel_tag) values (?, ?, ?, ?)";

    private static final String READING =
            "insert into reading (id, visit_id, place_in_list, measure, corner, wheel_tag, spot, amount, as_written, corrects, reason) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    /** Instead of asking for each id before: whose id is taken is not written, and then told. */
    private static final String READING_OF_NEW_VISIT = READING + " on conflict (id) do nothing";

    private final Handle handle;
    private final KeptStatements statements;

    public CarWriter(Handle handle) {
        this.handle = handle;
        this.statements = new KeptStatements(handle);
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

    /**
     * New visits of a car, together.
     *
     * @throws BookException when the id of a reading is in the book already
     */
    public void writeVisits(String vehicleId, List<Visit> visits) {
        if (visits.isEmpty()) {
            return;
        }
        for (var visit : visits) {
            statements.add(
                    VISIT,
                    visit.id(),
                    vehicleId,
                    visit.date().toString(),
                    visit.odometerKm(),
                    visit.card().technician(),
                    visit.card().notes(),
                    text(visit.card().nextVisitDue()));
            for (int i = 0; i < visit.card().workDone().size(); i++) {
                statements.add(WORK_LINE, visit.id(), i, visit.card().workDone().get(i));
            }
            addPositions(visit);
            add(READING_OF_NEW_VISIT, visit.id(), 0, visit.readings());
        }
        statements.write(VISIT);
        statements.write(WORK_LINE);
        statements.write(POSITION);
        refuseTaken(visits, statements.write(READING_OF_NEW_VISIT));
        visits.forEach(visit ->
                UsedToolLedger.write(statements, visit.id(), visit.card().tools()));
        countChange(visits.getFirst().id());
    }

    /** Of the first visit that has readings whose ids were taken. */
    private void refuseTaken(List<Visit> visits, int[] written) {
        int place = 0;
        for (var visit : visits) {
            var taken = new ArrayList<String>();
            for (var reading : visit.readings()) {
                if (written[place++] == 0) {
                    taken.add(reading.id());
                }
            }
            new TakenIds(handle).refuseReadings(visit.id(), taken);
        }
    }

    /** The wheels that a car came and left on, in the place of what stood there. */
    public void replaceWheels(Visit visit) {
        handle.execute("delete from visit_wheel where visit_id = ?", visit.id());
        addPositions(visit);
        statements.write(POSITION);
        countChange(visit.id());
    }

    public void countChange(String visitId) {
        statements.execute(
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
        add(READING, visitId, place, readings);
        statements.write(READING);
    }

    private void add(String statement, String visitId, int firstPlace, List<Reading> readings) {
        int place = firstPlace;
        for (var reading : readings) {
            statements.add(
                    statement,
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

    private void addPositions(Visit visit) {
        visit.arrivedOn().forEach((corner, tag) -> statements.add(POSITION, visit.id(), "ARRIVED", corner.name(), tag));
        visit.leftOn().forEach((corner, tag) -> statements.add(POSITION, visit.id(), "LEFT", corner.name(), tag));
    }

    private Optional<Customer> write(Customer customer) {
        var before = find(customer.id());
        statements.execute(
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
        VehicleRows.vehicle(vehicle).set("customer_id", customerId).insert(statements);
        for (var axle : Axle.values()) {
            VehicleRows.axle(vehicle.id(), axle, vehicle.axle(axle)).insert(statements);
        }
        VehicleRows.liftPoints(vehicle).forEach(row -> row.insert(statements));
    }

    void write(String vehicleId, WheelSet set, int place) {
        new TableRow("wheel_set")
                .set("vehicle_id", vehicleId)
                .set("id", set.id())
                .set("place_in_list", place)
                .set("season", set.season())
                .set("store_place", set.storePlace())
                .insert(statements);
        for (int i = 0; i < set.wheels().size(); i++) {
            VehicleRows.wheel(set.wheels().get(i))
                    .set("vehicle_id", vehicleId)
                    .set("set_id", set.id())
                    .set("place_in_list", i)
                    .insert(statements);
        }
    }

    static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }
}
