package cornerbook.core.assess;

import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.PadHistory;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.tread.learn.BookOfWear;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;

/** Learns from the cars of a book what each car's forecast starts from. */
public final class Learner {
    /** The default counts as this many cars. Common practice, no source. */
    private static final double DEFAULT_AS_CARS = 4;

    private Learner() {}

    /**
     * Learns from cars, each of which is looked at once and let go.
     *
     * @param today the day to note
     */
    public static Knowledge learn(Iterable<CarHistory> cars, LocalDate today) {
        var wear = new ArrayList<WearHistory>();
        var seasons = new EnumMap<SeasonKind, List<List<Double>>>(SeasonKind.class);
        var pads = new ArrayList<List<PadHistory>>();
        for (var car : cars) {
            // What wears a car whose driven axle nobody has told says nothing of another's.
            if (car.visits().isEmpty() || car.vehicle().drive() == null) {
                continue;
            }
            var runs = new RunHistory(car, car.visits(), Knowledge.NONE);
            var forecaster = new TreadForecaster(car, car.visits(), car.visits().getLast(), runs, Knowledge.NONE);
            for (var set : car.sets()) {
                wear.add(forecaster.wearHistory(set));
            }
            var ofCar = SeizingCurve.histories(
                    car.vehicle(),
                    car.visits(),
                    runs.next(SeasonKind.ALL_SEASON).meanKm());
            if (!ofCar.isEmpty()) {
                pads.add(ofCar);
            }
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
                BookOfWear.learn(wear),
                distances,
                pads.isEmpty()
                        ? null
                        : new LearnedSeizing(
                                SeizingHazard.learnFrom(pads).fit(),
                                pads.size(),
                                pads.stream().mapToInt(List::size).sum()));
    }
}
