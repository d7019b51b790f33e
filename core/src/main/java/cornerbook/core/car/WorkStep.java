package cornerbook.core.car;

import cornerbook.core.corner.Axle;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The steps of a visit in the order of the work. What is read in each, {@link Measure} says. */
public enum WorkStep implements Said {
    /** The car as it comes in. */
    RECEIVE(Wheels.ARRIVED, false),
    /** Once round the car, before it is lifted. */
    LOOK_ROUND(Wheels.LEAVING, true),
    /** Onto the hoist; nothing is read. */
    LIFT,
    /** In the air, before a wheel or a caliper comes off. */
    BEFORE_THE_BRAKES,
    /** What is seen at a corner, tyre and wheel with it. */
    LOOK_OVER(Wheels.ARRIVED, true),
    PADS_AND_MOVEMENT,
    DISC,
    /** Drum, shoes and what moves them, the drum off; at a disc the lever that the cable of the parking brake pulls. */
    DRUM,
    PADS_CLOSELY(Wheels.LEAVING, true),
    PISTON_AND_HARDWARE(Wheels.LEAVING, true),
    SWEPT_FACES(Wheels.LEAVING, true),
    /** Also the shoes of a parking brake inside a disc, which are seen when it is off. */
    HUB_AND_DISC_APART(Wheels.LEAVING, true),
    CLEANED_AND_LUBRICATED(Wheels.LEAVING, true),
    REPLACED(Wheels.LEAVING, true),
    CLOSED(Wheels.LEAVING, true),
    /** After the last caliper is closed, before the car moves. */
    PEDAL_AND_PARKING_BRAKE,
    BRAKE_FLUID,
    /** The wheels that come off, or stay. */
    WHEELS_OFF(Wheels.ARRIVED, false),
    /** The wheels that the car did not come on. */
    WHEELS_ON(Wheels.FROM_STORE, false),
    /** What is seen at the wheels that the car did not come on, before they go on. */
    LOOK_OVER_STORED(Wheels.FROM_STORE, true),
    /** What stands on the sidewalls of the wheels that the car leaves on. */
    SIDEWALLS(Wheels.LEAVING, true),
    /** What the pressure to be set depends on. */
    TEMPERATURES,
    PRESSURE,
    SENSORS,
    /** Car on the ground. */
    TORQUE,
    BATTERY,
    /** The 12 V battery after it was charged fully and has rested. */
    BATTERY_CHARGED(Wheels.LEAVING, true),
    /** Back from the drive that burnishes the brakes. */
    AFTER_THE_DRIVE(Wheels.LEAVING, true);

    /** Which wheels are in hand. */
    public enum Wheels {
        ARRIVED,
        FROM_STORE,
        LEAVING
    }

    private final Wheels wheels;
    private final boolean rare;

    WorkStep() {
        this(Wheels.LEAVING, false);
    }

    WorkStep(Wheels wheels, boolean rare) {
        this.wheels = wheels;
        this.rare = rare;
    }

    public Wheels wheels() {
        return wheels;
    }

    /** Whether most visits do without it, so that a form may fold it. */
    public boolean rare() {
        return rare;
    }

    /**
     * What is read in it of a corner, a wheel or the car, in the order of the work.
     *
     * @param axle of the corner; null for the whole car
     */
    public List<Measure> measures(Measure.Carrier carrier, Vehicle vehicle, @Nullable Axle axle) {
        boolean shoesInDisc = axle != null && vehicle.axle(axle).hasParkingShoes();
        return Arrays.stream(Measure.values())
                .filter(measure -> isReadHere(measure, shoesInDisc))
                .filter(measure -> measure.carrier() == carrier && measure.isOn(vehicle, axle))
                .toList();
    }

    private boolean isReadHere(Measure measure, boolean shoesInDisc) {
        return (shoesInDisc && measure.isReadOfShoes()) ? this == HUB_AND_DISC_APART : measure.isReadIn(this);
    }
}
