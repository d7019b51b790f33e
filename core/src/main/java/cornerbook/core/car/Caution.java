package cornerbook.core.car;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * What to mind where the hands are, gravest first in each step: its source, the cars that it holds for, and the steps at which it is
 * shown. What the book does not know of a car (whether it is a hybrid, brakes by wire, air suspension, a tyre filled with sealant) is minded as if it
 * were there. The vehicle manufacturer's procedure outranks all of them.
 */
@SuppressWarnings(
        "ImmutableEnumChecker") // the list is a copy, the conditions know nothing but the car they are asked about
public enum Caution implements Said {
    ORANGE_CABLES(Source.COMMON_PRACTICE, WorkStep.LIFT),
    ASLEEP(Source.VEHICLE_MAKERS, Vehicle::mayHaveHighVoltage, WorkStep.LIFT),
    KEY_AWAY(Source.COMMON_PRACTICE, car -> !car.mayHaveHighVoltage(), WorkStep.LIFT),
    JACK_MODE(Source.COMMON_PRACTICE, WorkStep.LIFT),
    LIFT_POINTS(Source.HOIST_INSTITUTE, WorkStep.LIFT),
    LOOK_UP(Source.COMMON_PRACTICE, WorkStep.LIFT),
    SERVICE_PLUG(Source.COMMON_PRACTICE, WorkStep.BEFORE_THE_BRAKES),
    READY_STARTS(Source.VEHICLE_MAKERS, Caution::isHybrid, WorkStep.BEFORE_THE_BRAKES),
    BY_WIRE_CLOSES(Source.FROM_MEMORY, Vehicle::mayBrakeByWire, WorkStep.BEFORE_THE_BRAKES),
    CHOCKED(Source.COMMON_PRACTICE, Vehicle::mayHaveElectricParkingBrake, WorkStep.BEFORE_THE_BRAKES),
    SERVICE_MODE_FIRST(Source.COMMON_PRACTICE, Vehicle::mayHaveElectricParkingBrake, WorkStep.BEFORE_THE_BRAKES),
    SUPPORT_12_V(Source.COMMON_PRACTICE, Vehicle::mayHaveElectricParkingBrake, WorkStep.BEFORE_THE_BRAKES),
    DUST(Source.DUST_RULE, WorkStep.PADS_AND_MOVEMENT, WorkStep.DRUM, WorkStep.CLEANED_AND_LUBRICATED),
    HOT_DISC(Source.COMMON_PRACTICE, WorkStep.PADS_AND_MOVEMENT, WorkStep.AFTER_THE_DRIVE),
    NEVER_BY_ITS_HOSE(Source.SERVICE_LITERATURE, WorkStep.PADS_AND_MOVEMENT),
    DRUM_HELD_BY_ITS_SHOES(Source.COMMON_PRACTICE, Caution::hasDrum, WorkStep.DRUM),
    SHOES_UNDER_SPRINGS(Source.COMMON_PRACTICE, Caution::hasDrum, WorkStep.DRUM),
    FLUID_RISES(Source.COMMON_PRACTICE, WorkStep.PISTON_AND_HARDWARE),
    DIAL_AT_SAME_RADIUS(Source.SERVICE_LITERATURE, WorkStep.HUB_AND_DISC_APART),
    PARKING_SHOES_HOLD_THE_DISC(Source.COMMON_PRACTICE, Vehicle::hasParkingShoes, WorkStep.HUB_AND_DISC_APART),
    GRINDING(Source.GRINDING_RULES, WorkStep.CLEANED_AND_LUBRICATED),
    BOTH_SIDES_TOGETHER(Source.COMMON_PRACTICE, WorkStep.REPLACED),
    BOLTS_USED_ONCE(Source.COMMON_PRACTICE, WorkStep.CLOSED),
    PARKING_SHOES_BEFORE_CABLE(Source.VEHICLE_MAKERS, Vehicle::hasParkingShoes, WorkStep.CLOSED),
    BY_WIRE_PEDAL(Source.FROM_MEMORY, Vehicle::mayBrakeByWire, WorkStep.PEDAL_AND_PARKING_BRAKE),
    PUMP_THE_PEDAL(Source.COMMON_PRACTICE, car -> !car.brakesByWire(), WorkStep.PEDAL_AND_PARKING_BRAKE),
    FLUID_BURNS(Source.COMMON_PRACTICE, WorkStep.BRAKE_FLUID),
    RUSTED_ON(Source.COMMON_PRACTICE, WorkStep.WHEELS_OFF),
    DAMAGED_STUD(Source.COMMON_PRACTICE, WorkStep.LOOK_OVER, WorkStep.WHEELS_OFF, WorkStep.WHEELS_ON),
    SEALANT(Source.COMMON_PRACTICE, WorkStep.WHEELS_OFF),
    BARE_FACES(Source.COMMON_PRACTICE, WorkStep.WHEELS_ON),
    COLD_TYRES(Source.VEHICLE_MAKERS, WorkStep.RECEIVE, WorkStep.PRESSURE),
    NO_IMPACT_WRENCH(Source.COMMON_PRACTICE, WorkStep.TORQUE),
    IN_SEQUENCE(Source.COMMON_PRACTICE, WorkStep.TORQUE),
    LET_IT_SLEEP(Source.VEHICLE_MAKERS, Vehicle::mayHaveHighVoltage, WorkStep.BATTERY),
    LET_IT_REST(Source.BATTERY_MAKERS, car -> !car.highVoltage(), WorkStep.BATTERY),
    STANDBY_ASLEEP(Source.VEHICLE_MAKERS, WorkStep.BATTERY),
    TERMINALS_ELECTRIC(Source.VEHICLE_MAKERS, Vehicle::mayHaveHighVoltage, WorkStep.BATTERY),
    TERMINALS(Source.BATTERY_MAKERS, car -> !car.mayHaveHighVoltage(), WorkStep.BATTERY),
    LITHIUM_ABOVE_ZERO(Source.BATTERY_MAKERS, car -> mayBe(car, Chemistry.LITHIUM), WorkStep.BATTERY_CHARGED),
    NEVER_CHARGE_FROZEN(Source.BATTERY_MAKERS, car -> !isLithium(car), WorkStep.BATTERY_CHARGED),
    CHARGING_GAS(Source.BATTERY_MAKERS, car -> !isLithium(car), WorkStep.BATTERY_CHARGED),
    CHARGER_FOR_AGM(Source.COMMON_PRACTICE, car -> mayBe(car, Chemistry.AGM), WorkStep.BATTERY_CHARGED),
    CHARGED_BY_CONVERTER(Source.COMMON_PRACTICE, Vehicle::mayHaveHighVoltage, WorkStep.BATTERY_CHARGED),
    WALKING_SPEED(Source.COMMON_PRACTICE, WorkStep.AFTER_THE_DRIVE),
    BED_IN_PARKING_SHOES(Source.VEHICLE_MAKERS, Vehicle::hasParkingShoes, WorkStep.AFTER_THE_DRIVE),
    AIM_AT_ALL_FOUR(Source.COMMON_PRACTICE, WorkStep.AFTER_THE_DRIVE);

    /** Who says so. */
    public enum Source implements Said {
        COMMON_PRACTICE,
        FROM_MEMORY,
        /** 29 CFR 1910.1001, appendix F. */
        DUST_RULE,
        GRINDING_RULES,
        SERVICE_LITERATURE,
        HOIST_INSTITUTE,
        VEHICLE_MAKERS,
        BATTERY_MAKERS
    }

    private final Source source;
    private final Predicate<Vehicle> applies;
    private final List<WorkStep> steps;

    Caution(Source source, WorkStep... steps) {
        this(source, car -> true, steps);
    }

    Caution(Source source, Predicate<Vehicle> applies, WorkStep... steps) {
        this.source = source;
        this.applies = applies;
        this.steps = List.of(steps);
    }

    public Source source() {
        return source;
    }

    /** Where it is shown, in the order of the work. */
    public List<WorkStep> steps() {
        return steps;
    }

    /** What to mind at this car in a step, gravest first. */
    public static List<Caution> at(WorkStep step, Vehicle vehicle) {
        return Arrays.stream(values())
                .filter(each -> each.steps.contains(step) && each.applies.test(vehicle))
                .toList();
    }

    private static boolean isHybrid(Vehicle car) {
        return car.mayHaveHighVoltage() && !car.electric();
    }

    private static boolean hasDrum(Vehicle car) {
        return car.front().brake().hasDrum() || car.rear().brake().hasDrum();
    }

    private static boolean mayBe(Vehicle car, Chemistry chemistry) {
        var battery = car.battery();
        return battery == null || battery.chemistry() == chemistry;
    }

    private static boolean isLithium(Vehicle car) {
        var battery = car.battery();
        return battery != null && battery.chemistry() == Chemistry.LITHIUM;
    }
}
