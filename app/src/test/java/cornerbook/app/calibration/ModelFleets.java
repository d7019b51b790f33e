package cornerbook.app.calibration;

import cornerbook.core.numeric.Estimate;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearModel;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import cornerbook.core.tread.learn.WearLearner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;

/**
 * Cars drawn from the wear model's own equation: they show that its algebra is right, and nothing of how tyres wear. Where each
 * last reading fell in the distribution that was forecast for it: the probability integral transform (PIT,
 * Dawid 1984, J. R. Statist. Soc. A 147:278), which is even from 0 to 1 when forecasts are honest.
 *
 * @param byCar the PIT of each car's last readings
 */
record ModelFleets(List<List<Double>> byCar) {
    static final int BINS = 20;
    private static final double LOWER = 0.05;
    private static final double UPPER = 0.95;

    ModelFleets {
        byCar = List.copyOf(byCar);
    }

    /** Simulated cars, forecast with what was learned from their own readings before the last. */
    record OfFleet(WearParameters truth, LearnedWear learned, ModelFleets calibration) {}

    static OfFleet ofFleet(int cars, long seed, WearParameters truth, WearPrior prior) {
        var fleet = SimulatedFleet.make(cars, seed, truth);
        var learned =
                WearLearner.learn(fleet.stream().map(SimulatedFleet.Car::before).toList(), prior);
        var model = new WearModel(learned.parameters());
        var byCar = new ArrayList<List<Double>>();
        for (var car : fleet) {
            var posterior = model.fit(car.before().newDepths(), car.before().readings());
            byCar.add(car.last().stream()
                    .map(reading -> {
                        var depth = posterior.depth(reading.groove(), reading.tyre(), reading.run());
                        double sdMm =
                                Math.hypot(depth.sd(), learned.parameters().readingErrorMm());
                        return new Estimate(depth.mean(), sdMm).probabilityBelow(reading.depthMm());
                    })
                    .toList());
        }
        return new OfFleet(truth, learned, new ModelFleets(byCar));
    }

    int readings() {
        return byCar.stream().mapToInt(List::size).sum();
    }

    /** Share of all readings inside their 90 % interval. */
    double coverage() {
        long inside = byCar.stream()
                .flatMap(List::stream)
                .filter(pit -> pit >= LOWER && pit <= UPPER)
                .count();
        return (double) inside / readings();
    }

    /** One reading of each car, drawn by the seed, so that the counts are independent of each other. */
    int[] histogram(long seed) {
        var random = new Random(seed);
        var counts = new int[BINS];
        for (var pits : byCar) {
            double pit = Objects.requireNonNull(pits.get(random.nextInt(pits.size())));
            counts[Math.min(BINS - 1, (int) (pit * BINS))]++;
        }
        return counts;
    }

    /** Pearson's X² of the histogram against an even one, with {@code BINS − 1} degrees of freedom. */
    static double chiSquare(int[] histogram) {
        double expected = (double) Arrays.stream(histogram).sum() / histogram.length;
        return Arrays.stream(histogram)
                .mapToDouble(count -> (count - expected) * (count - expected) / expected)
                .sum();
    }
}
