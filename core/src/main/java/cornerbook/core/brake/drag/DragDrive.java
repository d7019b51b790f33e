package cornerbook.core.brake.drag;

import cornerbook.core.brake.drag.DragSaid.Input;
import cornerbook.core.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * The drive before discs were read.
 *
 * @param speedKmh about as it was driven, 10 to 130 km/h
 * @param minutes how long, 1 to 300; null for so long that the discs grow no warmer
 * @param rollingCircumferenceM way of one turn of a wheel, 1.5 to 4 m
 */
public record DragDrive(double speedKmh, @Nullable Double minutes, double rollingCircumferenceM) {
    /** Common practice, no source; the force that is found hardly depends on it. */
    public static final double USUAL_SPEED_KMH = 60;

    private static final double SECONDS_PER_MINUTE = 60;

    public DragDrive {
        Range.check(Input.SPEED, speedKmh, 10, 130, "km/h");
        Range.checkKnown(Input.MINUTES, minutes, 1, 300, "min");
        Range.check(Input.ROLLING_CIRCUMFERENCE, rollingCircumferenceM, 1.5, 4, "m");
    }

    double speedMPerS() {
        return speedKmh / 3.6;
    }

    double turnsPerMinute() {
        return speedMPerS() / rollingCircumferenceM * SECONDS_PER_MINUTE;
    }

    /** Share of the warmth of a drive without end that this one has come to. */
    double shareOfSteady(double coolingWPerK, double heatCapacityJPerK) {
        return minutes == null ? 1 : -Math.expm1(-coolingWPerK / heatCapacityJPerK * minutes * SECONDS_PER_MINUTE);
    }
}
