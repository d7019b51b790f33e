package cornerbook.core.visit;

import cornerbook.core.brake.LearnedSeizing;
import cornerbook.core.brake.PadHistory;
import cornerbook.core.brake.SeizingHazard;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.wear.WearHistory;
import cornerbook.core.wear.WearKnowledge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a book has learned from all its cars, for each car's forecast to start from.
 *
 * @param learnedOn the day; null when nothing was learned and the defaults serve
 * @param distances by season kind; a kind that is missing has the default
 * @param seizing hazard of pads; null when no cleaning of guides is in the book, and the priors serve
 */
public record Knowledge(
        @Nullable LocalDate learnedOn,
        WearKnowledge wear,
        Map<SeasonKind, DistancePrior> distances,
        @Nullable LearnedSeizing seizing) {
    /** Nothing learned. */
    public static final Knowledge NONE = new Knowledge(null, WearKnowledge.NONE, Map.of(), null);

    /** The default counts as this many cars. Common practice, no source. */
    private static final double DEFAULT_AS_CARS = 4;

    public Knowledge {
        distances = Map.copyOf(distances);
    }

    /**
     * Learns from all cars of a book.
     *
     * @param today the day to note
     */
    public static Knowledge learn(List<CarHistory> cars, LocalDate today) {
        var wear = new ArrayList<WearHistory>();
        var seasons = new EnumMap<SeasonKind, List<List<Double>>>(SeasonKind.class);
        var pads = new ArrayList<PadHistory>();
        int carsWithPads = 0;
        for (var car : cars) {
            if (car.visits().isEmpty()) {
                continue;
            }
            var runs = new RunHistory(car, car.visits(), NONE);
            var forecaster = new TreadForecaster(car, car.visits(), car.visits().getLast(), runs, NONE);
            for (var set : car.sets()) {
                wear.add(forecaster.wearHistory(set));
            }
            var ofCar = SeizingCurve.histories(
                    car.vehicle(),
                    PadClock.of(car.visits()),
                    runs.next(SeasonKind.ALL_SEASON).meanKm());
            pads.addAll(ofCar);
            carsWithPads += ofCar.isEmpty() ? 0 : 1;
            for (var season : SeasonKind.values()) {
                seasons.computeIfAbsent(season, key -> new ArrayList<>()).add(runs.seasonsOfKind(season));
            }
        }
        var distances = new EnumMap<SeasonKind, DistancePrior>(SeasonKind.class);
        seasons.forEach((season, ofCars) -> {
            var learned = DistancePrior.learn(ofCars, DEFAULT_AS_CARS);
            if (learned.cars() > 0) {
                distances.put(season, learned);
            }
        });
        return new Knowledge(
                today,
                WearKnowledge.learn(wear),
                distances,
                pads.isEmpty()
                        ? null
                        : new LearnedSeizing(SeizingHazard.learn(pads).fit(), carsWithPads, pads.size()));
    }

    DistancePrior distance(SeasonKind season) {
        return distances.getOrDefault(season, DistancePrior.DEFAULT);
    }
}
