package cornerbook.core.brake.burnish;

import cornerbook.core.quantity.Range;

/**
 * One stop of a burnish drive, straight and level.
 *
 * @param toKmh 0 for a full stop
 * @param regenerationShare share of the energy that the car takes back by regeneration instead of friction
 */
public record BurnishStop(double fromKmh, double toKmh, double decelerationMPerS2, double regenerationShare) {
    public BurnishStop {
        Range.check(BurnishSaid.Part.SPEED_BEFORE, fromKmh, 5, 200, "km/h");
        Range.check(BurnishSaid.Part.SPEED_AFTER, toKmh, 0, fromKmh - 1, "km/h");
        Range.check(BurnishSaid.Part.DECELERATION, decelerationMPerS2, 0.3, 10, "m/s²");
        Range.check(BurnishSaid.Part.REGENERATION_SHARE, regenerationShare, 0, 1, "");
    }

    double durationS() {
        return (fromKmh - toKmh) / 3.6 / decelerationMPerS2;
    }
}
