package cornerbook.app.book.car;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.TakenIds;
import cornerbook.core.assess.IdentityRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import java.time.LocalDate;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Changes the data of a car that is in the book. Runs inside the caller's transaction. */
final class CarChange {
    private final Handle handle;

    CarChange(Handle handle) {
        this.handle = handle;
    }

    void apply(CarHistory changed, long seenRevision, LocalDate day) {
        var vehicle = changed.vehicle();
        long revision = new CarLedger(within(handle))
                .findRevision(vehicle.id())
                .orElseThrow(() -> new BookException(new CarSaid.NoCar(vehicle.id())));
        if (revision != seenRevision) {
            throw new BookException(new CarSaid.ChangedMeanwhile());
        }
        IdentityRules.check(changed).stream().findFirst().ifPresent(problem -> {
            throw new BookException(problem.message());
        });
        var customer = changed.customer();
        new TableRow("customer")
                .set("id", customer.id())
                .set("name", customer.name())
                .set("phone", customer.phone())
                .set("email", customer.email())
                .set("language", customer.language())
                .update(handle, List.of("id"));
        VehicleRows.vehicle(vehicle).set("revision", revision + 1).update(handle, List.of("id"));
        for (var axle : Axle.values()) {
            VehicleRows.axle(vehicle.id(), axle, vehicle.axle(axle)).update(handle, List.of("vehicle_id", "axle"));
        }
        handle.execute("delete from lift_point where vehicle_id = ?", vehicle.id());
        VehicleRows.liftPoints(vehicle).forEach(row -> row.insert(handle));
        var known = new CarReader(handle).sets(vehicle.id());
        changeSets(known, changed, day);
        addSets(known.size(), changed);
    }

    private void changeSets(List<WheelSet> known, CarHistory changed, LocalDate day) {
        var vehicleId = changed.vehicle().id();
        for (int i = 0; i < known.size(); i++) {
            new WheelChanges(handle, vehicleId)
                    .apply(known.get(i), changed.sets().get(i), day);
        }
    }

    private void addSets(int known, CarHistory changed) {
        var added = changed.sets().subList(known, changed.sets().size());
        new TakenIds(handle)
                .refuseWheels(
                        changed.vehicle().id(),
                        added.stream()
                                .flatMap(set -> set.wheels().stream())
                                .map(Wheel::tag)
                                .toList());
        for (int i = 0; i < added.size(); i++) {
            new CarWriter(handle).write(changed.vehicle().id(), added.get(i), known + i);
        }
    }
}
