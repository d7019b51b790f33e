package cornerbook.core.car;

import org.jspecify.annotations.Nullable;

/**
 * A rim with its tyre.
 *
 * @param tag by which the book knows it
 * @param sensorId identity of its pressure sensor, or null
 */
public record Wheel(String tag, Tyre tyre, @Nullable String sensorId, WheelDetails details) {
    /** A wheel of which nothing more is known. */
    public Wheel(String tag, Tyre tyre, @Nullable String sensorId) {
        this(tag, tyre, sensorId, WheelDetails.NOT_KNOWN);
    }
}
