package cornerbook.core.finding;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import java.util.EnumSet;
import java.util.Set;
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
        /** What was seen at a tyre. */
        TYRE_DAMAGE,
        TYRE_LOAD,
        PRESSURE,
        PRESSURE_SENSOR,
        /** Whether a wheel belongs on the hub. */
        WHEEL_FIT,
        /** What was seen at a rim. */
        RIM,
        /** Studs, bolts and nuts, and their key. */
        WHEEL_FASTENERS,
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
        /** Lining of the shoes of one drum. */
        SHOE,
        DRUM,
        /** Cylinder, shoes, adjuster, lever and springs of one drum. */
        DRUM_GEAR,
        /** Whether a wheel is free once its brake is released, and braked once it is applied. */
        BRAKE_RELEASE,
        /** What several faults of the brakes come to together. */
        BRAKES,
        /** Pads or discs of one axle, replaced together. */
        BRAKE_PAIR,
        /** Hoses and pipes. */
        BRAKE_LINE,
        PARKING_BRAKE,
        BRAKE_FLUID,
        /** Bearing, joints, shafts, dampers and springs. */
        SUSPENSION,
        /** Corrosion and leaks. */
        STRUCTURE,
        /** Wipers, washer and lights. */
        VISIBILITY,
        BATTERY,
        /** The car on the hoist. */
        LIFT,
        /** A gauge, wrench or hoist that the visit was worked with. */
        SHOP_TOOL;

        private static final Set<Part> WEAR = EnumSet.of(
                WHEEL_SET, TREAD_PATTERN, TYRE_AGE, PAD, PAD_SEIZING, DISC, SHOE, DRUM, BRAKE_FLUID, BATTERY);

        /** Whether it is used up in time; else it is set, fitted or repaired, and is right or not. */
        public boolean wears() {
            return WEAR.contains(this);
        }

        /** Whether it is the shop's own matter, and says nothing of the car. */
        public boolean isOfShop() {
            return this == LIFT || this == SHOP_TOOL;
        }
    }
}
