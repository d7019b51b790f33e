package cornerbook.app.web;

import cornerbook.core.corner.Corner;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Vehicle;
import cornerbook.core.visit.Visit;
import java.util.ArrayList;
import java.util.List;

/** Every place for a reading that a visit has, by the car's configuration and the wheels that it came and leaves on. */
public record VisitSlots(Vehicle vehicle, Visit visit) {
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
        return tag.equals(visit.arrivedOn().get(corner))
                ? Slot.at(corner, tag, Measure.PRESSURE_SET, Measure.WHEEL_TORQUE)
                : Slot.at(
                        corner,
                        tag,
                        Measure.TREAD_DEPTH,
                        Measure.PRESSURE_FOUND,
                        Measure.PRESSURE_SET,
                        Measure.WHEEL_TORQUE);
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
