package cornerbook.core.car;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.BrakeDetails.ParkingBrake;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What can be read during a visit: the steps of the work in which it is read, what it belongs to, its unit or its words inside
 * the book, its range, and where it is taken. Forms, the sheet in the bay and the schema of the visit file follow, in this order.
 */
@SuppressWarnings("ImmutableEnumChecker") // every set is made by Set.of
public enum Measure implements Said {
    TREAD_DEPTH(Set.of(WorkStep.WHEELS_OFF, WorkStep.WHEELS_ON), Carrier.WHEEL, "mm", 0, 25, Set.of(Spot.values())),
    /** Gauge pressure as the car came in. */
    PRESSURE_FOUND(Set.of(WorkStep.RECEIVE, WorkStep.WHEELS_ON), Carrier.WHEEL, "kPa", 0, 1000, Set.of()),
    /** Gauge pressure as it was set. */
    PRESSURE_SET(WorkStep.PRESSURE, Carrier.WHEEL, "kPa", 0, 1000, Set.of()),
    /** Gauge pressure that the wheel's sensor gives, after it was set, as the car or a reader shows it. */
    SENSOR_PRESSURE(WorkStep.SENSORS, Carrier.WHEEL, "kPa", 0, 1000, Set.of()),
    /** Temperature that the sensor gives with it. */
    SENSOR_TEMPERATURE(WorkStep.SENSORS, Carrier.WHEEL, "°C", -50, 90, Set.of()),
    /** On the sidewall of the wheel's tyre. */
    WINTER_MARK(WorkStep.SIDEWALLS, Carrier.WHEEL, Scale.WINTER_MARK, Set.of()),
    STUDS(WorkStep.SIDEWALLS, Carrier.WHEEL, Scale.STUDS, Set.of()),
    /** How the tyre stands at this corner by what its sidewall asks. */
    MOUNTED(WorkStep.SIDEWALLS, Carrier.WHEEL, Scale.MOUNTED, Set.of()),
    /** Lowest torque confirmed over the fasteners of the wheel, car on the ground. */
    WHEEL_TORQUE(WorkStep.TORQUE, Carrier.WHEEL, "N·m", 0, 1000, Set.of()),
    TYRE_BULGE(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.SIGN, Sides.NONE),
    TYRE_CORDS(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.SIGN, Sides.NONE),
    TYRE_CUT(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.STATE, Sides.NONE),
    /** Cracks of age and ozone in tread or sidewall. */
    TYRE_AGE_CRACKS(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.STATE, Sides.NONE),
    /** Whether the bead sits evenly all round, and is whole. */
    TYRE_BEAD(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.STATE, Sides.NONE),
    TYRE_VALVE(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.STATE, Sides.NONE),
    PUNCTURE(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.PUNCTURE, Sides.NONE),
    /** Of the hole, after what made it was taken out. */
    PUNCTURE_DIAMETER(Steps.LOOKED_OVER, Carrier.WHEEL, "mm", 0.5, 50, Set.of()),
    /** Whether the car was driven on the flat tyre. */
    TYRE_DRIVEN_FLAT(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.SIGN, Sides.NONE),
    /** Stem and patch, from the inside. */
    PUNCTURE_REPAIRED(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.DONE, Sides.NONE),
    RIM_BENT(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.STATE, Sides.NONE),
    RIM_CRACK(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.SIGN, Sides.NONE),
    /** At the bead seat or the face that lies on the hub. */
    RIM_CORROSION(Steps.LOOKED_OVER, Carrier.WHEEL, Scale.STATE, Sides.NONE),
    /** All weights of the wheel together. */
    BALANCE_WEIGHTS(Steps.LOOKED_OVER, Carrier.WHEEL, "g", 0, 500, Set.of()),
    /** A stud, bolt or nut that is broken, stretched, or whose thread or seat is damaged. */
    WHEEL_STUDS(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.SIGN, Sides.NONE),
    WHEEL_BEARING(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    BALL_JOINT(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    /** Boot of the constant-velocity joint. */
    DRIVE_SHAFT_BOOT(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    DAMPER(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    SPRING(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    BRAKE_HOSE(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    BRAKE_PIPE(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    /** Corrosion of jacking point, sill and structure. */
    STRUCTURE_CORROSION(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    /** Of oil, coolant or fuel. */
    LEAK(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.STATE, Sides.NONE),
    /** The wheel turned by hand, all brakes released. */
    WHEEL_TURNING(WorkStep.LOOK_OVER, Carrier.CORNER, Scale.TURNING, Sides.NONE),
    WIPERS(WorkStep.LOOK_ROUND, Carrier.VEHICLE, Scale.STATE, Sides.NONE),
    WASHER(WorkStep.LOOK_ROUND, Carrier.VEHICLE, Scale.STATE, Sides.NONE),
    LIGHTS(WorkStep.LOOK_ROUND, Carrier.VEHICLE, Scale.STATE, Sides.NONE),
    /** Where the key of the locking nuts lies. */
    LOCKING_NUT_KEY(WorkStep.LOOK_ROUND, Carrier.VEHICLE, Scale.KEY_PLACE, Sides.NONE),
    /** What an odometer read last that was replaced since the visit before, by the notice at the left door frame. */
    REPLACED_ODOMETER(WorkStep.LOOK_ROUND, Carrier.VEHICLE, "km", 0, Visit.HIGHEST_ODOMETER_KM, Set.of()),
    /** Whether somebody else drives the car since the visit before. */
    ANOTHER_DRIVER(WorkStep.LOOK_ROUND, Carrier.VEHICLE, Scale.ANSWER, Sides.NONE),
    /** Friction material at the leading edge, or where it is thinnest when it is read at one place only. */
    PAD_THICKNESS(WorkStep.PADS_AND_MOVEMENT, Carrier.CORNER, "mm", 0, 30, Sides.BOTH),
    /** Friction material at the trailing edge. */
    PAD_THICKNESS_TRAILING(WorkStep.PADS_CLOSELY, Carrier.CORNER, "mm", 0, 30, Sides.BOTH),
    PAD_WEAR_INDICATOR(WorkStep.PADS_CLOSELY, Carrier.CORNER, Scale.WEAR_INDICATOR, Sides.BOTH),
    /** Friction material that rust has lifted off its backing plate, seen at the edge. */
    PAD_EDGE_LIFT(WorkStep.PADS_CLOSELY, Carrier.CORNER, Scale.AMOUNT, Sides.BOTH),
    /** Pad movement in its bracket by hand. */
    PAD_MOVEMENT(WorkStep.PADS_AND_MOVEMENT, Carrier.CORNER, Scale.MOVEMENT, Sides.BOTH),
    /** Slide pins of a sliding caliper by hand, the worse of the two. */
    SLIDE_PIN_MOVEMENT(WorkStep.PADS_AND_MOVEMENT, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    /** Retaining pins of a fixed caliper by hand, the worst of them. */
    RETAINING_PIN_MOVEMENT(WorkStep.PADS_AND_MOVEMENT, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    /** Piston pressed back: the first, counted from the inner side and the leading edge, or the worst where they are not told apart. */
    PISTON_MOVEMENT(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    PISTON_2_MOVEMENT(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    PISTON_3_MOVEMENT(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    PISTON_4_MOVEMENT(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    PISTON_5_MOVEMENT(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    PISTON_6_MOVEMENT(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    /** How far the piston came back by itself after it was moved out by 0.5 mm. */
    PISTON_RETURN(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, "mm", 0, 3, Sides.NONE),
    /** Whether a brake that held the wheel let go only when its bleeder was opened. */
    HOSE_HOLDS_PRESSURE(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.ANSWER, Sides.NONE),
    /** Lever at the brake that the cable of the parking brake pulls, and the cable with it. */
    PARKING_LEVER_MOVEMENT(WorkStep.DRUM, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    /** Abutment clips, springs and retainers. */
    BRAKE_HARDWARE(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.CONDITION, Sides.NONE),
    /** Boots of piston and pins. */
    BRAKE_BOOTS(WorkStep.PISTON_AND_HARDWARE, Carrier.CORNER, Scale.CONDITION, Sides.NONE),
    DISC_THICKNESS(WorkStep.DISC, Carrier.CORNER, "mm", 0, 60, Sides.NONE),
    /** Total lateral runout of the installed disc; may be written as the dial at 4 or more equal steps from stud 1. */
    DISC_RUNOUT(WorkStep.DISC, Carrier.CORNER, "mm", 0, 5, Sides.NONE),
    /** Thickest less thinnest point; may be written as the thickness at 4 points or more. */
    DISC_THICKNESS_VARIATION(WorkStep.DISC, Carrier.CORNER, "mm", 0, 2, Sides.NONE),
    /** Total lateral runout of the bare hub face, written as that of the disc. */
    HUB_RUNOUT(WorkStep.HUB_AND_DISC_APART, Carrier.CORNER, "mm", 0, 5, Sides.NONE),
    /** From the middle of the wheel to where the dial stood on the hub face. */
    HUB_DIAL_RADIUS(WorkStep.HUB_AND_DISC_APART, Carrier.CORNER, "mm", 20, 200, Sides.NONE),
    /** From the middle of the wheel to where the dial stood on the disc. */
    DISC_DIAL_RADIUS(WorkStep.HUB_AND_DISC_APART, Carrier.CORNER, "mm", 50, 300, Sides.NONE),
    /** Total lateral runout after the disc was moved on, written as before; angles still count from stud 1. */
    DISC_RUNOUT_MOVED(WorkStep.HUB_AND_DISC_APART, Carrier.CORNER, "mm", 0, 5, Sides.NONE),
    /** By how many studs it was moved on, in the direction in which they are numbered. */
    DISC_MOVED_BY(WorkStep.HUB_AND_DISC_APART, Carrier.CORNER, "studs", 1, 9, Sides.NONE),
    /** Share of the swept face that is under rust. */
    DISC_RUST(WorkStep.SWEPT_FACES, Carrier.CORNER, "%", 0, 100, Sides.BOTH),
    DISC_PITTING(WorkStep.SWEPT_FACES, Carrier.CORNER, Scale.AMOUNT, Sides.BOTH),
    /** Height of the lip at the edge of the swept face. */
    DISC_LIP(WorkStep.SWEPT_FACES, Carrier.CORNER, "mm", 0, 10, Sides.NONE),
    DISC_CRACKS(WorkStep.SWEPT_FACES, Carrier.CORNER, Scale.AMOUNT, Sides.NONE),
    /** Inside diameter of the drum, the largest that was read around it. */
    DRUM_DIAMETER(WorkStep.DRUM, Carrier.CORNER, "mm", 100, 500, Sides.NONE),
    /** Friction material of both shoes over their metal where it is thinnest, beside the chamfer. */
    LINING_THICKNESS(WorkStep.DRUM, Carrier.CORNER, "mm", 0, 20, Sides.NONE),
    /** Friction material of both shoes over the rivet head that is nearest to the surface. */
    LINING_OVER_RIVETS(WorkStep.DRUM, Carrier.CORNER, "mm", 0, 20, Sides.NONE),
    /** With fluid, oil or grease. */
    LINING_SOAKED(WorkStep.DRUM, Carrier.CORNER, Scale.SIGN, Sides.NONE),
    DRUM_CRACKS(WorkStep.DRUM, Carrier.CORNER, Scale.AMOUNT, Sides.NONE),
    /** Behind its boots. */
    WHEEL_CYLINDER(WorkStep.DRUM, Carrier.CORNER, Scale.LEAKING, Sides.NONE),
    SHOE_MOVEMENT(WorkStep.DRUM, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    ADJUSTER_MOVEMENT(WorkStep.DRUM, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    SHOE_SPRINGS(WorkStep.DRUM, Carrier.CORNER, Scale.CONDITION, Sides.NONE),
    BRACKET_CLEANED(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    /** What went on the slide pins, or the retaining pins. */
    PIN_LUBRICANT(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.LUBRICANT, Sides.NONE),
    /** What went on the faces that the pads slide on. */
    ABUTMENT_LUBRICANT(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.LUBRICANT, Sides.NONE),
    /** Movement of both pads after their guides were cleaned and lubricated at this visit; a reading says that they were. */
    PAD_MOVEMENT_AFTER_SERVICE(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    /** Slide or retaining pins after service, the worst of them. */
    PIN_MOVEMENT_AFTER_SERVICE(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    /** Pistons after service, the worst of them. */
    PISTON_MOVEMENT_AFTER_SERVICE(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    /** Where the shoes rest and turn, and the adjuster. */
    SHOES_CLEANED(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    /** Shoes, adjuster and lever after service, the worst of them. */
    SHOE_MOVEMENT_AFTER_SERVICE(WorkStep.CLEANED_AND_LUBRICATED, Carrier.CORNER, Scale.MOVEMENT, Sides.NONE),
    PADS_REPLACED(WorkStep.REPLACED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    DISC_REPLACED(WorkStep.REPLACED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    BRAKE_HARDWARE_REPLACED(WorkStep.REPLACED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    SHOES_REPLACED(WorkStep.REPLACED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    DRUM_REPLACED(WorkStep.REPLACED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    WHEEL_CYLINDER_REPLACED(WorkStep.REPLACED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    BRAKE_HOSE_REPLACED(WorkStep.REPLACED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    CALIPER_CLOSED(WorkStep.CLOSED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    BRACKET_BOLTS_TORQUED(WorkStep.CLOSED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    /** Drum on, or the disc over the parking brake's shoes; shoes adjusted, wheel turns. */
    DRUM_CLOSED(WorkStep.CLOSED, Carrier.CORNER, Scale.DONE, Sides.NONE),
    /** As {@link #WHEEL_TURNING}, once the brake is closed and the pedal was pressed and released. */
    WHEEL_TURNING_AFTER_SERVICE(WorkStep.CLOSED, Carrier.CORNER, Scale.TURNING, Sides.NONE),
    /** Of the swept face of the disc, or of the drum, by infrared, within a few minutes of the stop. */
    DISC_TEMPERATURE(WorkStep.AFTER_THE_DRIVE, Carrier.CORNER, "°C", -50, 900, Sides.NONE),
    PARKING_BRAKE_IN_SERVICE_MODE(WorkStep.BEFORE_THE_BRAKES, Carrier.VEHICLE, Scale.DONE, Sides.NONE),
    /** Until it was hard, before the car moved. */
    PEDAL_PUMPED(WorkStep.PEDAL_AND_PARKING_BRAKE, Carrier.VEHICLE, Scale.DONE, Sides.NONE),
    /** Out of its service mode again, applied and released. */
    PARKING_BRAKE_CYCLED(WorkStep.PEDAL_AND_PARKING_BRAKE, Carrier.VEHICLE, Scale.DONE, Sides.NONE),
    PARKING_BRAKE_HOLDING(WorkStep.PEDAL_AND_PARKING_BRAKE, Carrier.VEHICLE, Scale.HOLDING, Sides.NONE),
    /** How far its lever or pedal goes until it holds, in clicks of its catch. */
    PARKING_BRAKE_TRAVEL(WorkStep.PEDAL_AND_PARKING_BRAKE, Carrier.VEHICLE, "clicks", 0, 30, Sides.NONE),
    BRAKE_FLUID_BOILING_POINT(WorkStep.BRAKE_FLUID, Carrier.VEHICLE, "°C", 50, 350, Sides.NONE),
    /** Water in the fluid, by mass. */
    BRAKE_FLUID_WATER(WorkStep.BRAKE_FLUID, Carrier.VEHICLE, "%", 0, 10, Sides.NONE),
    BRAKE_FLUID_REPLACED(WorkStep.BRAKE_FLUID, Carrier.VEHICLE, Scale.DONE, Sides.NONE),
    /** Temperature of the tyres when their pressure was read and set. */
    TYRE_TEMPERATURE(WorkStep.TEMPERATURES, Carrier.VEHICLE, "°C", -50, 90, Set.of()),
    /** Of the air where the car will stand. */
    OUTSIDE_TEMPERATURE(WorkStep.TEMPERATURES, Carrier.VEHICLE, "°C", -50, 60, Set.of()),
    /** Voltage at the 12 V battery at rest, as the car came in. */
    BATTERY_VOLTAGE(WorkStep.BATTERY, Carrier.VEHICLE, "V", 0, 18, Set.of()),
    /** Cold cranking current that the tester estimates, in the rating standard of the battery's label. */
    BATTERY_CRANKING_CURRENT(WorkStep.BATTERY, Carrier.VEHICLE, "A", 0, 2000, Set.of()),
    BATTERY_TEMPERATURE(WorkStep.BATTERY, Carrier.VEHICLE, "°C", -50, 90, Set.of()),
    /** What the car draws from the 12 V battery once everything in it sleeps. */
    STANDBY_CURRENT(WorkStep.BATTERY, Carrier.VEHICLE, "mA", 0, 10_000, Set.of()),
    /** Voltage at rest after the 12 V battery was charged fully at this visit; a reading says that it was. */
    BATTERY_VOLTAGE_CHARGED(WorkStep.BATTERY_CHARGED, Carrier.VEHICLE, "V", 0, 18, Set.of()),
    /** Cranking current after that charge and rest. */
    BATTERY_CRANKING_CURRENT_CHARGED(WorkStep.BATTERY_CHARGED, Carrier.VEHICLE, "A", 0, 2000, Set.of()),
    /** Charge that a discharge test draws from the full 12 V battery. */
    BATTERY_CAPACITY(WorkStep.BATTERY_CHARGED, Carrier.VEHICLE, "A·h", 0, 300, Set.of());

    /** The pistons of one caliper, counted from the inner side and the leading edge. */
    public static final List<Measure> PISTONS = List.of(
            PISTON_MOVEMENT,
            PISTON_2_MOVEMENT,
            PISTON_3_MOVEMENT,
            PISTON_4_MOVEMENT,
            PISTON_5_MOVEMENT,
            PISTON_6_MOVEMENT);

    /** What a reading belongs to. A wheel's reading names the wheel and the corner that it stood at. */
    public enum Carrier {
        WHEEL,
        CORNER,
        VEHICLE
    }

    private static final class Steps {
        /** A wheel is looked over whether the car came on it or it comes from the store. */
        static final Set<WorkStep> LOOKED_OVER = Set.of(WorkStep.LOOK_OVER, WorkStep.LOOK_OVER_STORED);
    }

    private static final class Sides {
        static final Set<Spot> NONE = Set.of();
        static final Set<Spot> BOTH = Set.of(Spot.INNER, Spot.OUTER);
    }

    private final Set<WorkStep> steps;
    private final Carrier carrier;
    private final String unit;
    private final @Nullable Scale scale;
    private final double lowest;
    private final double highest;
    private final Set<Spot> spots;

    Measure(WorkStep step, Carrier carrier, String unit, double lowest, double highest, Set<Spot> spots) {
        this(Set.of(step), carrier, unit, lowest, highest, spots);
    }

    Measure(Set<WorkStep> steps, Carrier carrier, String unit, double lowest, double highest, Set<Spot> spots) {
        this.steps = steps;
        this.carrier = carrier;
        this.unit = unit;
        this.scale = null;
        this.lowest = lowest;
        this.highest = highest;
        this.spots = spots;
    }

    Measure(WorkStep step, Carrier carrier, Scale scale, Set<Spot> spots) {
        this(Set.of(step), carrier, scale, spots);
    }

    Measure(Set<WorkStep> steps, Carrier carrier, Scale scale, Set<Spot> spots) {
        this.steps = steps;
        this.carrier = carrier;
        this.unit = "1";
        this.scale = scale;
        this.lowest = 0;
        this.highest = scale.words().size() - 1;
        this.spots = spots;
    }

    /** Whether it is read of shoes, in a drum or inside a disc. */
    boolean isReadOfShoes() {
        return switch (this) {
            case LINING_THICKNESS, LINING_SOAKED, SHOE_MOVEMENT, ADJUSTER_MOVEMENT, SHOE_SPRINGS -> true;
            default -> false;
        };
    }

    /** Whether it is read in this step. */
    public boolean isReadIn(WorkStep step) {
        return steps.contains(step);
    }

    /**
     * Whether a car has what it is read at.
     *
     * @param axle of the corner; null where it is read of the whole car
     */
    public boolean isOn(Vehicle vehicle, @Nullable Axle axle) {
        return switch (this) {
            case SLIDE_PIN_MOVEMENT ->
                axle != null && vehicle.axle(axle).brake().mayHaveCaliper(Caliper.SLIDING);
            case RETAINING_PIN_MOVEMENT ->
                axle != null && vehicle.axle(axle).brake().hasCaliper(Caliper.FIXED);
            case PISTON_2_MOVEMENT, PISTON_3_MOVEMENT, PISTON_4_MOVEMENT, PISTON_5_MOVEMENT, PISTON_6_MOVEMENT ->
                axle != null && vehicle.axle(axle).brake().pistons() > PISTONS.indexOf(this);
            case PARKING_LEVER_MOVEMENT -> axle != null && hasCable(vehicle, axle);
            case PARKING_BRAKE_TRAVEL -> !vehicle.hasElectricParkingBrake();
            case DRUM_DIAMETER, DRUM_CRACKS, WHEEL_CYLINDER, DRUM_REPLACED, WHEEL_CYLINDER_REPLACED ->
                axle != null && vehicle.axle(axle).brake().hasDrum();
            case LINING_OVER_RIVETS ->
                axle != null && vehicle.axle(axle).brake().hasRivetedLining();
            case LINING_THICKNESS ->
                axle != null
                        && vehicle.axle(axle).brake().hasShoes()
                        && !vehicle.axle(axle).brake().hasRivetedLining();
            case LINING_SOAKED,
                    SHOE_MOVEMENT,
                    ADJUSTER_MOVEMENT,
                    SHOE_SPRINGS,
                    SHOES_CLEANED,
                    SHOE_MOVEMENT_AFTER_SERVICE,
                    SHOES_REPLACED,
                    DRUM_CLOSED -> axle != null && vehicle.axle(axle).brake().hasShoes();
            case PAD_THICKNESS,
                    PAD_THICKNESS_TRAILING,
                    PAD_WEAR_INDICATOR,
                    PAD_EDGE_LIFT,
                    PAD_MOVEMENT,
                    PISTON_MOVEMENT,
                    PISTON_RETURN,
                    BRAKE_HARDWARE,
                    BRAKE_BOOTS,
                    DISC_THICKNESS,
                    DISC_RUNOUT,
                    DISC_THICKNESS_VARIATION,
                    HUB_RUNOUT,
                    HUB_DIAL_RADIUS,
                    DISC_DIAL_RADIUS,
                    DISC_RUNOUT_MOVED,
                    DISC_MOVED_BY,
                    DISC_RUST,
                    DISC_PITTING,
                    DISC_LIP,
                    DISC_CRACKS,
                    BRACKET_CLEANED,
                    PIN_LUBRICANT,
                    ABUTMENT_LUBRICANT,
                    PAD_MOVEMENT_AFTER_SERVICE,
                    PIN_MOVEMENT_AFTER_SERVICE,
                    PISTON_MOVEMENT_AFTER_SERVICE,
                    PADS_REPLACED,
                    DISC_REPLACED,
                    BRAKE_HARDWARE_REPLACED,
                    CALIPER_CLOSED,
                    BRACKET_BOLTS_TORQUED ->
                axle == null || !vehicle.axle(axle).brake().hasDrum();
            case DRIVE_SHAFT_BOOT -> axle != null && vehicle.mayDrive(axle);
            case PARKING_BRAKE_IN_SERVICE_MODE, PARKING_BRAKE_CYCLED -> vehicle.hasElectricParkingBrake();
            case BATTERY_CRANKING_CURRENT, BATTERY_CRANKING_CURRENT_CHARGED -> !vehicle.electric();
            case SENSOR_PRESSURE, SENSOR_TEMPERATURE ->
                vehicle.details().pressureWarning().kind() == PressureWarning.Kind.DIRECT;
            default -> true;
        };
    }

    /** Where its kind is not known, a parking brake without a motor pulls cables at the rear. */
    private static boolean hasCable(Vehicle vehicle, Axle axle) {
        var kind = vehicle.axle(axle).brake().details().parkingBrake();
        return kind == null
                ? axle == Axle.REAR && !vehicle.hasElectricParkingBrake()
                : kind != ParkingBrake.NONE && kind != ParkingBrake.MOTOR_ON_CALIPER;
    }

    public Carrier carrier() {
        return carrier;
    }

    /** The unit of the value kept in the book, as it is written for people; "1" for words. */
    public String unit() {
        return unit;
    }

    /** The words that it is read in; null for a measure that is a number. */
    public @Nullable Scale scale() {
        return scale;
    }

    /** Whether it may be written as the points that its value is the spread of. */
    public boolean mayBePoints() {
        return this == DISC_THICKNESS_VARIATION
                || this == DISC_RUNOUT
                || this == HUB_RUNOUT
                || this == DISC_RUNOUT_MOVED;
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
