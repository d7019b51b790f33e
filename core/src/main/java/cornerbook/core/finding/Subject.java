package cornerbook.core.finding;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What a finding is about. Null where the finding is not about one corner, one wheel or one set. */
public record Subject(
        Part part,
        @Nullable Corner corner,
        @Nullable String wheelTag,
        @Nullable String setId) {
    /** The part of the car. */
    public enum Part implements Said {
        WHEEL_SET,
        TREAD_PATTERN,
        /** Wheels of one axle, or all four, against each other. */
        TREAD_DIFFERENCE,
        TYRE_AGE,
        TYRE_LOAD,
        PRESSURE,
        PRESSURE_SENSOR,
        /** Whether a wheel belongs on the hub. */
        WHEEL_FIT,
        /** Whether the tyres on the car go together, and stand where and as they have to. */
        TYRE_FITTING,
        /** Whether the law lets the car drive on these tyres at this time of the year. */
        TYRE_LAW,
        WHEEL_TORQUE,
        PAD,
        /** All pads of the car together: whether they stay free. */
        PAD_SEIZING,
        /** Pins, piston, hardware and boots of one corner. */
        CALIPER,
        DISC,
        /** Pads or discs of one axle, replaced together. */
        BRAKE_PAIR,
        PARKING_BRAKE,
        BRAKE_FLUID,
        BATTERY,
        /** The car on the hoist. */
        LIFT,
        /** A gauge, wrench or hoist that the visit was worked with. */
        SHOP_TOOL
    }
}
