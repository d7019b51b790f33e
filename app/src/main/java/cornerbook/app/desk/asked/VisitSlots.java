package cornerbook.app.desk.asked;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.List;

/** Every place for a reading that a visit has, by the car's configuration and the wheels that it came and leaves on. */
public record VisitSlots(Vehicle vehicle, Visit visit) {
    /** What the sensor of a wheel gives after the pressure is set. */
    public static final List<Measure> SENSOR = List.of(Measure.SENSOR_PRESSURE, Measure.SENSOR_TEMPERATURE);

    /** The wheel that the car came on; none where no wheel is known. */
    public List<Slot> arrived(Corner corner) {
        var tag = visit.arrivedOn().get(corner);
        return tag == null ? List.of() : Slot.at(corner, tag, Measure.TREAD_DEPTH, Measure.PRESSURE_FOUND);
    }

    public List<Slot> brake(Corner corner) {
        return slots(new BrakeGroups(vehicle).at(corner));
    }

    /** The wheel that the car leaves on; none until it is recorded. */
    public List<Slot> leaving(Corner corner) {
        var tag = visit.leftOn().get(corner);
        if (tag == null) {
            return List.of();
        }
        var measures = new ArrayList<Measure>();
        if (!tag.equals(visit.arrivedOn().get(corner))) {
            measures.addAll(List.of(Measure.TREAD_DEPTH, Measure.PRESSURE_FOUND));
        }
        measures.add(Measure.PRESSURE_SET);
        if (vehicle.details().pressureWarning().kind() == PressureWarning.Kind.DIRECT) {
            measures.addAll(SENSOR);
        }
        measures.add(Measure.WHEEL_TORQUE);
        return Slot.at(corner, tag, measures.toArray(Measure[]::new));
    }

    public List<Slot> ofVehicle() {
        var all = new ArrayList<>(slots(new BrakeGroups(vehicle).ofVehicle()));
        all.addAll(batteryAndTyres());
        return List.copyOf(all);
    }

    public List<Slot> batteryAndTyres() {
        return Slot.at(
                null,
                null,
                Measure.TYRE_TEMPERATURE,
                Measure.OUTSIDE_TEMPERATURE,
                Measure.BATTERY_VOLTAGE,
                Measure.BATTERY_CRANKING_CURRENT,
                Measure.BATTERY_TEMPERATURE);
    }

    private static List<Slot> slots(List<BrakeGroups.Step> steps) {
        return steps.stream().flatMap(step -> step.slots().stream()).toList();
    }

    /** All of them, in the order of the work. */
    public List<Slot> all() {
        var slots = new ArrayList<Slot>();
        for (var corner : Corner.values()) {
            slots.addAll(arrived(corner));
            slots.addAll(brake(corner));
            slots.addAll(leaving(corner));
        }
        slots.addAll(ofVehicle());
        return List.copyOf(slots);
    }
}
