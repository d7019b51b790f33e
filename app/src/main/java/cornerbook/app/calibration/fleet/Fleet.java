package cornerbook.app.calibration.fleet;

import java.util.SplittableRandom;
import java.util.stream.Stream;

/** Simulated cars, one after the other; the same scenario and seed give the same cars. */
public final class Fleet {
    private Fleet() {}

    public static Stream<SimulatedCar> cars(Scenario scenario, int cars, long seed) {
        return new SplittableRandom(seed).longs(cars).mapToObj(carSeed -> CarLife.live(scenario, carSeed));
    }
}
