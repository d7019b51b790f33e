package cornerbook.core.car;

import cornerbook.core.corner.Spot;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** A measure as the label of a field, with the place where it is read: "Pad inner". */
public record MeasureAt(Measure measure, @Nullable Spot spot) implements Said {
    /** The same at a car: a pedal that moves no fluid is not pumped. */
    public static Said of(Vehicle vehicle, Measure measure, @Nullable Spot spot) {
        return measure == Measure.PEDAL_PUMPED && vehicle.brakesByWire()
                ? new CarSaid.BrakesByWireReady()
                : new MeasureAt(measure, spot);
    }
}
