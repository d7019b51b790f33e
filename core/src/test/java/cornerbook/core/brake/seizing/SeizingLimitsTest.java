package cornerbook.core.brake.seizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.WeibullDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fleets of which some cars rust, whatever their use, drawn from Hipparchus' distributions (org.hipparchus 4.0.3). */
class SeizingLimitsTest {
    private static final SeizingExposure CAR = new SeizingExposure(0.4, false, 15_000, 0.5);
    /** Of the logarithm of a car's life. */
    private static final double CARS_DIFFER = 0.5;

    private static final double LIFE_MONTHS = 60;
    private static final double SHAPE = 2;
    private static final int PADS = 8;
    private static final int FLEETS = 200;

    /** Whoever takes pads as independent holds it 85 to 90 times in a hundred; of 95 the priors' pull takes a few. */
    @ParameterizedTest
    @ValueSource(ints = {60, 120, 400})
    void limitsHoldTheChanceOverAllCars(int cars) {
        double chance = chanceOverAllCars(12);
        int held = 0;
        for (int fleet = 0; fleet < FLEETS; fleet++) {
            var said = SeizingHazard.learnFrom(fleet(cars, new SplittableRandom(fleet)))
                    .chance(CAR, 0, 12);
            held += said.lower() <= chance && chance <= said.upper() ? 1 : 0;
        }
        assertThat((double) held / FLEETS).isBetween(0.9, 0.98);
    }

    private static List<List<PadHistory>> fleet(int size, RandomGenerator random) {
        var cars = new ArrayList<List<PadHistory>>();
        for (int car = 0; car < size; car++) {
            var life = new WeibullDistribution(SHAPE, lifeMonths(random.nextDouble()));
            int visits = random.nextInt(1, 7);
            var pads = new ArrayList<PadHistory>();
            for (int pad = 0; pad < PADS; pad++) {
                double seizedAt = life.inverseCumulativeProbability(random.nextDouble());
                int seen = (int) Math.ceil(seizedAt / 6);
                pads.add(new PadHistory(
                        seen <= visits
                                ? CensoredTime.between(6.0 * (seen - 1), 6.0 * seen)
                                : CensoredTime.notBy(6.0 * visits),
                        CAR));
            }
            cars.add(pads);
        }
        return cars;
    }

    private static double chanceOverAllCars(double months) {
        int steps = 4000;
        double sum = 0;
        for (int step = 0; step < steps; step++) {
            sum += new WeibullDistribution(SHAPE, lifeMonths((step + 0.5) / steps)).cumulativeProbability(months);
        }
        return sum / steps;
    }

    private static double lifeMonths(double quantile) {
        return LIFE_MONTHS * Math.exp(CARS_DIFFER * new NormalDistribution().inverseCumulativeProbability(quantile));
    }
}
