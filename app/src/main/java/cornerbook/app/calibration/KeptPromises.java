package cornerbook.app.calibration;

import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the page on calibration says of the cars of a book, for cars that are too many for one process: each car is scored where it is,
 * and what comes of it are a few numbers.
 */
public final class KeptPromises {
    private KeptPromises() {}

    /**
     * A figure of many cars, in percent or points.
     *
     * @param value null when too little was forecast
     * @param low from which on it is as asked
     * @param high up to which it is as asked
     */
    public record Kept(
            String name,
            Said figure,
            @Nullable Double value,
            @Nullable Double standardError,
            double low,
            double high) {}

    /** The scores of a car that has a visit, as numbers for {@link #of}; the assessor knows nothing that this car has taught. */
    public static List<Double> ofCar(Assessor assessor, CarHistory car) {
        var scores = new ForecastScores();
        scores.add(assessor, car, new LaterVisits(car));
        return scores.numbers();
    }

    /** The figures of all cars together. */
    public static List<Kept> of(Stream<List<Double>> cars) {
        var scores = new ForecastScores();
        cars.forEachOrdered(scores::addCar);
        return of(scores);
    }

    static List<Kept> of(ForecastScores scores) {
        return Arrays.stream(Figure.values())
                .map(figure -> {
                    var measured = figure.of(scores);
                    var asked = figure.asked(false, true);
                    return new Kept(
                            figure.name(),
                            figure,
                            measured.map(Measured::value).orElse(null),
                            measured.map(Measured::sd).orElse(null),
                            asked.low(),
                            asked.high());
                })
                .toList();
    }
}
