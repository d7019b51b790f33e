package cornerbook.app.calibration.fleet;

import java.util.SplittableRandom;

/**
 * A generator for each matter of one car, so that the same car meets the same roads and the same driver whatever effects are
 * switched on: two scenarios differ by the effect alone.
 */
final class Dice {
    private final SplittableRandom body;
    private final SplittableRandom drivers;
    private final SplittableRandom days;
    private final SplittableRandom tyres;
    private final SplittableRandom gauge;
    private final SplittableRandom shop;
    private final SplittableRandom brakes;
    private final SplittableRandom slips;
    private final SplittableRandom seasons;

    Dice(long seed) {
        var root = new SplittableRandom(seed);
        body = root.split();
        drivers = root.split();
        days = root.split();
        tyres = root.split();
        gauge = root.split();
        shop = root.split();
        brakes = root.split();
        slips = root.split();
        seasons = root.split();
    }

    SplittableRandom body() {
        return body;
    }

    SplittableRandom drivers() {
        return drivers;
    }

    SplittableRandom days() {
        return days;
    }

    SplittableRandom tyres() {
        return tyres;
    }

    SplittableRandom gauge() {
        return gauge;
    }

    SplittableRandom shop() {
        return shop;
    }

    SplittableRandom brakes() {
        return brakes;
    }

    /** Errors that a scenario adds. */
    SplittableRandom slips() {
        return slips;
    }

    /** What a scenario does to whole seasons. */
    SplittableRandom seasons() {
        return seasons;
    }
}
