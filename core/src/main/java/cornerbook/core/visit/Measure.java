package cornerbook.core.visit;

import cornerbook.core.corner.Spot;
import java.util.Set;

/** What can be read during a visit: what it belongs to, its unit inside the book, its range, and where it is taken. */
@SuppressWarnings("ImmutableEnumChecker") // every set is made by Set.of
public enum Measure {
    TREAD_DEPTH(Carrier.WHEEL, "mm", 0, 25, Set.of(Spot.values())),
    /** Gauge pressure as the car came in. */
    PRESSURE_FOUND(Carrier.WHEEL, "kPa", 0, 1000, Set.of()),
    /** Gauge pressure as it was set. */
    PRESSURE_SET(Carrier.WHEEL, "kPa", 0, 1000, Set.of()),
    /** Lowest torque confirmed over the fasteners of the wheel, car on the ground. */
    WHEEL_TORQUE(Carrier.WHEEL, "N·m", 0, 1000, Set.of()),
    PAD_THICKNESS(Carrier.CORNER, "mm", 0, 30, Set.of(Spot.INNER, Spot.OUTER)),
    /** Pad movement in its bracket by hand: 0 free, 1 tight, 2 seized. */
    PAD_MOVEMENT(Carrier.CORNER, "1", 0, 2, Set.of(Spot.INNER, Spot.OUTER)),
    /** Movement of both pads after their guides were cleaned and lubricated at this visit; a reading says that they were. */
    PAD_MOVEMENT_AFTER_SERVICE(Carrier.CORNER, "1", 0, 2, Set.of()),
    /** Slide pins of a sliding caliper by hand, the worse of the two. */
    SLIDE_PIN_MOVEMENT(Carrier.CORNER, "1", 0, 2, Set.of()),
    DISC_THICKNESS(Carrier.CORNER, "mm", 0, 60, Set.of()),
    /** Thickest less thinnest point; may be written as the thickness at 4 points or more. */
    DISC_THICKNESS_VARIATION(Carrier.CORNER, "mm", 0, 2, Set.of()),
    DISC_RUNOUT(Carrier.CORNER, "mm", 0, 5, Set.of()),
    /** Temperature of the tyres when their pressure was read and set. */
    TYRE_TEMPERATURE(Carrier.VEHICLE, "°C", -50, 90, Set.of()),
    /** Voltage at the 12 V battery at rest. */
    BATTERY_VOLTAGE(Carrier.VEHICLE, "V", 0, 18, Set.of()),
    /** Cold cranking current that the tester estimates, in the rating standard of the battery's label. */
    BATTERY_CRANKING_CURRENT(Carrier.VEHICLE, "A", 0, 2000, Set.of()),
    BATTERY_TEMPERATURE(Carrier.VEHICLE, "°C", -50, 90, Set.of()),
    BRAKE_FLUID_BOILING_POINT(Carrier.VEHICLE, "°C", 50, 350, Set.of());

    /** What a reading belongs to. A wheel's reading names the wheel and the corner that it stood at. */
    public enum Carrier {
        WHEEL,
        CORNER,
        VEHICLE
    }

    private final Carrier carrier;
    private final String unit;
    private final double lowest;
    private final double highest;
    private final Set<Spot> spots;

    Measure(Carrier carrier, String unit, double lowest, double highest, Set<Spot> spots) {
        this.carrier = carrier;
        this.unit = unit;
        this.lowest = lowest;
        this.highest = highest;
        this.spots = spots;
    }

    public Carrier carrier() {
        return carrier;
    }

    /** The unit of the value kept in the book, as it is written for people. */
    public String unit() {
        return unit;
    }

    /** Whether it is read by hand as free, tight or seized: 0, 1, 2. */
    public boolean isMovement() {
        return unit.equals("1");
    }

    /** Lowest value that can be a reading at all. */
    public double lowest() {
        return lowest;
    }

    /** Highest value that can be a reading at all. */
    public double highest() {
        return highest;
    }

    /** The spots at which it is read; empty when there is only one. */
    public Set<Spot> spots() {
        return spots;
    }
}
