package cornerbook.app.exchange;

import cornerbook.core.say.Said;
import java.util.Locale;

/** What a field of a car is, by the object of the schema that it is in: both axles have the same fields. */
public enum CarItem implements Said {
    CUSTOMER_NAME,
    CUSTOMER_PHONE,
    CUSTOMER_EMAIL,
    CUSTOMER_LANGUAGE,
    VEHICLE_NAME,
    VEHICLE_PLATE,
    VEHICLE_VIN,
    VEHICLE_DRIVE,
    VEHICLE_ELECTRIC,
    VEHICLE_HYBRID,
    VEHICLE_BRAKES_BY_WIRE,
    VEHICLE_COPIED_FROM,
    VEHICLE_JURISDICTION(true),
    AXLE_AXLE_LOAD("kg"),
    AXLE_TYRE_SIZE(true),
    AXLE_LOAD_INDEX,
    AXLE_SPEED_SYMBOL,
    AXLE_PLACARD_PRESSURE("kPa"),
    BRAKE_CALIPER,
    BRAKE_ELECTRIC_PARKING_BRAKE,
    BRAKE_PAD_NEW("mm"),
    BRAKE_PAD_MINIMUM("mm"),
    BRAKE_DISC_NEW("mm"),
    BRAKE_DISC_MINIMUM("mm"),
    BRAKE_RUNOUT_LIMIT("mm"),
    BRAKE_THICKNESS_VARIATION_LIMIT("mm"),
    BRAKE_PARKING_BRAKE,
    BRAKE_REFINISH_THICKNESS("mm"),
    BRAKE_DISC_MASS("kg"),
    BRAKE_DISC_DIAMETER("mm"),
    BRAKE_DISC_TEMPERATURE_LIMIT("°C"),
    BRAKE_PISTONS,
    BRAKE_DRUM_NEW("mm"),
    BRAKE_DRUM_DISCARD("mm"),
    BRAKE_LINING_NEW("mm"),
    BRAKE_LINING_MINIMUM("mm"),
    BRAKE_LINING_RIVETED,
    BRAKE_PARKING_LINING_MINIMUM("mm"),
    FASTENER_THREAD,
    FASTENER_COUNT,
    FASTENER_SEAT,
    FASTENER_TORQUE("N·m"),
    FASTENER_RETORQUE_AFTER("km"),
    BATTERY_CHEMISTRY,
    BATTERY_RATED_CAPACITY_AH,
    BATTERY_RATED_CRANKING_CURRENT("A"),
    BATTERY_RATING_STANDARD,
    BATTERY_INSTALLED_ON,
    BATTERY_CHARGE_BELOW("V"),
    VEHICLE_BRAKE_FLUID,
    ALL_WHEEL_KIND,
    ALL_WHEEL_LIMIT("mm"),
    DIFFERENCES_SAME_AXLE("mm"),
    DIFFERENCES_DEEPER_PAIR_AT_REAR,
    USE_SALT_SHARE(true),
    USE_GARAGED,
    USE_FRICTION_BRAKE_SHARE(true),
    BODY_KERB_MASS("kg"),
    BODY_FRONT_SHARE(true),
    BODY_WHEELBASE("mm"),
    BODY_TRACK("mm"),
    BODY_GROUND_CLEARANCE("mm"),
    BODY_LIFT_POINT_HEIGHT("mm"),
    BODY_WHEEL_MASS("kg"),
    BODY_HEIGHT("mm"),
    LIFT_POINT_BEHIND_FRONT_AXLE("mm"),
    LIFT_POINT_LEFT_OF_CENTRE("mm"),
    BRAKE_FLUID_CHANGE_CHANGED_ON,
    BRAKE_FLUID_CHANGE_INTERVAL_YEARS,
    PRESSURE_WARNING_KIND,
    PRESSURE_WARNING_LEARNING,
    VEHICLE_MOUNTING(true),
    WHEEL_SET_SEASON,
    WHEEL_SET_STORE_PLACE,
    WHEEL_SET_TAG(true),
    TYRE_MODEL,
    TYRE_SIZE(true),
    TYRE_LOAD_INDEX,
    TYRE_SPEED_SYMBOL,
    TYRE_TIN,
    TYRE_DIRECTIONAL,
    TYRE_ASYMMETRIC,
    TYRE_NEW_DEPTH("mm"),
    WHEEL_SENSOR_ID,
    WHEEL_MOUNTING(true),
    WHEEL_SENSOR_TYPE(true),
    WHEEL_SENSOR_BATTERY_ON;

    private final String unit;
    private final boolean toldHowToWrite;

    CarItem() {
        this("", false);
    }

    CarItem(String unit) {
        this(unit, false);
    }

    CarItem(boolean toldHowToWrite) {
        this("", toldHowToWrite);
    }

    CarItem(String unit, boolean toldHowToWrite) {
        this.unit = unit;
        this.toldHowToWrite = toldHowToWrite;
    }

    /** The field of that name in an object of the schema, as "axleLoad" in "axle". */
    static CarItem of(String object, String name) {
        return valueOf(constant(object) + "_" + constant(name));
    }

    private static String constant(String name) {
        return name.replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT);
    }

    /** Of a quantity that is written without one; empty for none. */
    public String unit() {
        return unit;
    }

    /** Whether it is a share of a whole, which people write in percent too. */
    boolean isShare() {
        return name().endsWith("_SHARE");
    }

    /** Whether its name alone does not say how it is written, but its hint does. */
    public boolean isToldHowToWrite() {
        return toldHowToWrite;
    }
}
