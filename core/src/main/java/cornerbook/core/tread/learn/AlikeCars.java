package cornerbook.core.tread.learn;

import cornerbook.core.tread.SlowingSlope;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The wheel sets of cars that are taken to be alike, car by car, summed up once for all places. */
final class AlikeCars {
    /** Cars that one task sums; fixed, so that the sums do not depend on the number of processors. */
    private static final int CARS_PER_TASK = 64;

    private static final int PARAMETERS = LearningScale.PARAMETERS;
    private static final double CURVATURE_STEP = 1e-4;

    private final List<List<SetLikelihood>> cars;
    /** Where the curvature was asked for last, and what it was. */
    private double[] curvedAt = new double[0];

    private double[] lastCurvature = new double[0];

    private AlikeCars(List<List<SetLikelihood>> cars) {
        this.cars = cars;
    }

    /**
     * Sums up histories.
     *
     * @param proportions whose mean rates say how what a season adds is spread over the corners
     */
    static AlikeCars of(List<WearHistory> histories, WearParameters proportions) {
        var byCar = new TreeMap<String, List<WearHistory>>();
        for (var history : histories) {
            byCar.computeIfAbsent(history.car(), car -> new ArrayList<>()).add(history);
        }
        return new AlikeCars(byCar.values().parallelStream()
                .map(ofCar -> ofCar.stream()
                        .map(history -> new SetLikelihood(history, proportions))
                        .toList())
                .toList());
    }

    /** So many of the cars, taken evenly from all of them; all where there are no more. */
    AlikeCars some(int most) {
        if (cars.size() <= most) {
            return this;
        }
        return new AlikeCars(IntStream.range(0, most)
                .mapToObj(number -> cars.get((int) ((long) number * cars.size() / most)))
                .toList());
    }

    /** Their sets of which this holds, with the cars that have any; these cars themselves where it holds of all. */
    AlikeCars with(Predicate<SetLikelihood> holds) {
        if (cars.stream().flatMap(List::stream).allMatch(holds)) {
            return this;
        }
        return new AlikeCars(cars.stream()
                .map(car -> car.stream().filter(holds).toList())
                .filter(car -> !car.isEmpty())
                .toList());
    }

    int cars() {
        return cars.size();
    }

    int readings() {
        return cars.stream()
                .flatMap(List::stream)
                .mapToInt(SetLikelihood::readings)
                .sum();
    }

    CarSums sums(double[] at) {
        var parameters = LearningScale.parameters(at);
        int tasks = (cars.size() + CARS_PER_TASK - 1) / CARS_PER_TASK;
        var total = new CarSums();
        IntStream.range(0, tasks)
                .parallel()
                .mapToObj(task -> sums(
                        cars.subList(task * CARS_PER_TASK, Math.min(cars.size(), (task + 1) * CARS_PER_TASK)),
                        parameters))
                .toList()
                .forEach(total::add);
        return total;
    }

    private static CarSums sums(List<List<SetLikelihood>> cars, WearParameters parameters) {
        var sums = new CarSums();
        var at = new LikelihoodAt(parameters);
        for (var car : cars) {
            var ofCar = new double[PARAMETERS];
            for (var set : car) {
                var ofSet = new double[PARAMETERS];
                double log = at.log(set, ofSet);
                sums.addSet(log, ofSet, ofCar);
            }
            sums.addCar(ofCar);
        }
        return sums;
    }

    /** By car, the slope of the slowing that its readings ask for ({@link SlowingSlope}). */
    Map<String, Double> slowingSlopes(double[] at) {
        var slope = new SlowingSlope(LearningScale.parameters(at));
        return cars.parallelStream()
                .collect(Collectors.toMap(
                        car -> car.getFirst().car(),
                        car -> car.stream()
                                .mapToDouble(set -> set.slowingSlope(slope))
                                .sum()));
    }

    /** Second derivatives of the sum with their sign turned, row-major, from its slopes beside the place. */
    double[] curvature(double[] at) {
        if (!Arrays.equals(at, curvedAt)) {
            lastCurvature = curvatureAnew(at);
            curvedAt = at.clone();
        }
        return lastCurvature.clone();
    }

    private double[] curvatureAnew(double[] at) {
        var slope = sums(at).slope();
        var curvature = new double[PARAMETERS * PARAMETERS];
        for (int i = 0; i < PARAMETERS; i++) {
            var beside = at.clone();
            beside[i] += CURVATURE_STEP;
            var slopeBeside = sums(beside).slope();
            for (int j = 0; j < PARAMETERS; j++) {
                double second = (slope[j] - slopeBeside[j]) / CURVATURE_STEP;
                curvature[i * PARAMETERS + j] += second / 2;
                curvature[j * PARAMETERS + i] += second / 2;
            }
        }
        return curvature;
    }
}
