package cornerbook.app.calibration.fleet;

import java.util.SplittableRandom;

/**
 * A generator for each matter of one car, so that the same car meets the same roads and the same driver whatever effects are
 * switched on: two scenarios differ by the effect alone.
 */
record Dice(
        SplittableRandom body,
        SplittableRandom drivers,
        SplittableRandom days,
        SplittableRandom tyres,
        SplittableRandom gauge,
        SplittableRandom shop,
        SplittableRandom brakes,
        SplittableRandom slips,
        SplittableRandom seasons) {
    static Dice of(long seed) {
        var root = new SplittableRandom(seed);
        return new Dice(
                root.split(),
                root.split(),
                root.split(),
                root.split(),
                root.split(),
                root.split(),
                root.split(),
                root.split(),
                root.split());
    }
}
