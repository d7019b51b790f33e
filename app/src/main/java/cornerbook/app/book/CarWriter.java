package cornerbook.app.book;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.AxleSpecification;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Customer;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.Vehicle;
import cornerbook.core.visit.Visit;
import cornerbook.core.visit.WheelSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Writes rows of a car and its visits. Every method runs inside the caller's transaction. */
final class CarWriter {
    private final Handle handle;

    CarWriter(Handle handle) {
        this.handle = handle;
    }

    /** A new car with all its visits; gives its customer when the book knew other details of it. */
    Optional<Customer> writeCar(CarHistory history) {
        var changed = write(history.customer());
        write(history.vehicle(), history.customer().id());
        for (int i = 0; i < history.sets().size(); i++) {
            write(history.vehicle().id(), history.sets().get(i), i);
        }
        history.visits().forEach(visit -> writeVisit(history.vehicle().id(), visit));
        new FittingLedger(handle).rewrite(history);
        return changed;
    }

    void writeVisit(String vehicleId, Visit visit) {
        handle.execute(
                "insert into visit (id, vehicle_id, visit_date, odometer_km, technician, notes, next_visit_due) values (?, ?, ?, ?, ?, ?, ?)",
                visit.id(),
                vehicleId,
                visit.date().toString(),
                visit.odometerKm(),
                visit.technician(),
                visit.notes(),
                text(visit.nextVisitDue()));
        for (int i = 0; i < visit.workDone().size(); i++) {
            handle.execute(
                    "insert into work_line (visit_id, place_in_list, line) values (?, ?, ?)",
                    visit.id(),
                    i,
                    visit.workDone().get(i));
        }
        writePositions(visit.id(), "ARRIVED", visit.arrivedOn());
        writePositions(visit.id(), "LEFT", visit.leftOn());
        countChange(visit.id());
        writeReadings(visit.id(), 0, visit.readings());
    }

    void replaceLeaving(String visitId, Map<Corner, String> leftOn) {
        handle.execute("delete from visit_wheel where visit_id = ? and moment = 'LEFT'", visitId);
        writePositions(visitId, "LEFT", leftOn);
        countChange(visitId);
    }

    private void countChange(String visitId) {
        handle.execute(
                "update vehicle set revision = revision + 1 where id = (select vehicle_id from visit where id = ?)",
                visitId);
    }

    /** Appends readings; {@code from} is how many the visit has already. */
    void writeReadings(String visitId, int from, List<Reading> readings) {
        if (readings.isEmpty()) {
            return;
        }
        countChange(visitId);
        var batch = handle.prepareBatch(
                "insert into reading (id, visit_id, place_in_list, measure, corner, wheel_tag, spot, amount, as_written, corrects, reason) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
        int place = from;
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
        batch.execute();
    }

    private void writePositions(String visitId, String moment, Map<Corner, String> wheelAt) {
        for (var entry : wheelAt.entrySet()) {
            handle.execute(
                    "insert into visit_wheel (visit_id, moment, corner, wheel_tag) values (?, ?, ?, ?)",
                    visitId,
                    moment,
                    entry.getKey().name(),
                    entry.getValue());
        }
    }

    private Optional<Customer> write(Customer customer) {
        var before = find(customer.id());
        handle.execute(
                "insert into customer (id, name, phone, email) values (?, ?, ?, ?) on conflict (id) do update set name = excluded.name, phone = coalesce(excluded.phone, customer.phone), email = coalesce(excluded.email, customer.email)",
                customer.id(),
                customer.name(),
                customer.phone(),
                customer.email());
        return before.flatMap(known -> find(customer.id()).filter(now -> !now.equals(known)));
    }

    private Optional<Customer> find(String customerId) {
        return handle.select("select * from customer where id = ?", customerId)
                .map((row, context) -> CarReader.customer(row))
                .findFirst();
    }

    private void write(Vehicle vehicle, String customerId) {
        var fastener = vehicle.fastener();
        var battery = vehicle.battery();
        var fluid = vehicle.brakeFluid();
        handle.execute(
                "insert into vehicle (id, customer_id, name, plate, vin, drive, electric, jurisdiction, fastener_thread, fastener_count, fastener_seat, fastener_torque_nm, retorque_after_km, battery_chemistry, battery_capacity_ah, battery_cranking_a, battery_standard, battery_installed_on, brake_fluid) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                vehicle.id(),
                customerId,
                vehicle.name(),
                vehicle.plate(),
                vehicle.vin(),
                vehicle.drive().name(),
                number(vehicle.electric()),
                vehicle.jurisdiction(),
                fastener.thread(),
                fastener.count(),
                fastener.seat().name(),
                fastener.torqueNm(),
                fastener.retorqueAfterKm(),
                battery.chemistry().name(),
                battery.ratedCapacityAh(),
                battery.ratedCrankingCurrentA(),
                text(battery.ratingStandard()),
                text(battery.installedOn()),
                fluid == null ? null : fluid.name());
        write(vehicle.id(), Axle.FRONT, vehicle.front());
        write(vehicle.id(), Axle.REAR, vehicle.rear());
    }

    private void write(String vehicleId, Axle axle, AxleSpecification specification) {
        var brake = specification.brake();
        handle.execute(
                "insert into vehicle_axle (vehicle_id, axle, axle_load_kg, tyre_size, load_index, speed_symbol, placard_pressure_kpa, caliper, electric_parking_brake, pad_new_mm, pad_minimum_mm, disc_new_mm, disc_minimum_mm, runout_limit_mm, thickness_variation_limit_mm) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                vehicleId,
                axle.name(),
                specification.axleLoadKg(),
                specification.tyreSize(),
                specification.loadIndex(),
                specification.speedSymbol(),
                specification.placardPressureKpa(),
                brake.caliper().name(),
                number(brake.electricParkingBrake()),
                brake.padNewMm(),
                brake.padMinimumMm(),
                brake.discNewMm(),
                brake.discMinimumMm(),
                brake.runoutLimitMm(),
                brake.thicknessVariationLimitMm());
    }

    private void write(String vehicleId, WheelSet set, int place) {
        handle.execute(
                "insert into wheel_set (vehicle_id, id, place_in_list, season, store_place) values (?, ?, ?, ?, ?)",
                vehicleId,
                set.id(),
                place,
                set.season().name(),
                set.storePlace());
        for (int i = 0; i < set.wheels().size(); i++) {
            var wheel = set.wheels().get(i);
            var tyre = wheel.tyre();
            handle.execute(
                    "insert into wheel (tag, vehicle_id, set_id, place_in_list, tyre_model, tyre_size, load_index, speed_symbol, tin, directional, \"asymmetric\", new_depth_mm, sensor_id) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                    wheel.tag(),
                    vehicleId,
                    set.id(),
                    i,
                    tyre.model(),
                    tyre.size(),
                    tyre.loadIndex(),
                    tyre.speedSymbol(),
                    tyre.tin(),
                    number(tyre.directional()),
                    number(tyre.asymmetric()),
                    tyre.newDepthMm(),
                    wheel.sensorId());
        }
    }

    private static int number(boolean flag) {
        return flag ? 1 : 0;
    }

    private static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }
}
