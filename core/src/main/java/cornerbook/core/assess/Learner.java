package cornerbook.core.assess;

import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.PadHistory;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.WearHistory;
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
        var shares = new ArrayList<CarShare>();
        cars.forEach(car -> shares.add(CarShare.of(car)));
        return sum(shares, today);
    }

    /**
     * Learns from what was taken from cars before.
     *
     * @param today the day to note
     */
    public static Knowledge sum(Iterable<CarShare> shares, LocalDate today) {
        var wear = new ArrayList<WearHistory>();
        var seasons = new EnumMap<SeasonKind, List<List<Double>>>(SeasonKind.class);
        var pads = new ArrayList<List<PadHistory>>();
        for (var share : shares) {
            wear.addAll(share.wear());
            if (!share.pads().isEmpty()) {
                pads.add(share.pads());
            }
            share.kmPerDay()
                    .forEach((season, averages) -> seasons.computeIfAbsent(season, key -> new ArrayList<>())
                            .add(averages));
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
