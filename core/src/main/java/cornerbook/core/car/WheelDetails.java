package cornerbook.core.car;

import cornerbook.core.tyre.Mounting;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a wheel beyond its tyre; null for what is not.
 *
 * @param mounting how it sits on the hub
 * @param sensorType as its body or package says, as "433 MHz"
 * @param sensorBatteryOn day from which the sensor's battery runs
 */
public record WheelDetails(
        @Nullable Mounting mounting,
        @Nullable String sensorType,
        @Nullable LocalDate sensorBatteryOn) {
    /** Nothing is known. */
    public static final WheelDetails NOT_KNOWN = new WheelDetails(null, null, null);
}
