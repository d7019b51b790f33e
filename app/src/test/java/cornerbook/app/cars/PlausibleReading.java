package cornerbook.app.cars;

import cornerbook.core.car.Measure;

/** What a sound car shows, to be typed where a test only needs something that nobody questions. */
public final class PlausibleReading {
    private PlausibleReading() {}

    /**
     * The digits for a field of the bay sheet.
     *
     * @param fieldId whose second part is the measure
     */
    public static String of(String fieldId) {
        return switch (Measure.valueOf(fieldId.split("\\.", 3)[1])) {
            case PRESSURE_FOUND, PRESSURE_SET -> "240";
            case WHEEL_TORQUE -> "120";
            case PAD_THICKNESS -> "7";
            case DISC_THICKNESS -> "25";
            case DISC_RUNOUT -> "0.02";
            case DISC_THICKNESS_VARIATION -> "0.01";
            case BATTERY_VOLTAGE -> "12.6";
            case BATTERY_CRANKING_CURRENT -> "500";
            case BRAKE_FLUID_BOILING_POINT -> "200";
            default -> "5";
        };
    }
}
