package cornerbook.core.assess;

import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.PadHistory;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.OthersKnowledge;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.learn.BookOfWear;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Learns from the cars of a book what each car's forecast starts from. */
public final class Learner {
    /** The default counts as this many cars. Common practice, no source. */
    private static final double DEFAULT_AS_CARS = 4;

    /** What others' cars taught counts as this many of the shop's own, whose place is another. Common practice, no source. */
    private static final double OTHERS_AS_CARS = 20;

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
     * Learns from what was taken from cars before, from what is usual.
     *
     * @param today the day to note
     */
    public static Knowledge sum(Iterable<CarShare> shares, LocalDate today) {
        return sum(shares, today, null);
    }

    /**
     * The same from what other shops' cars taught.
     *
     * @param others null where nothing was taken in and what is usual serves
     */
    public static Knowledge sum(Iterable<CarShare> shares, LocalDate today, @Nullable OthersKnowledge others) {
        var there = others == null ? Knowledge.NONE : others.knowledge();
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
            var known = there.distance(season);
            var learned = DistancePrior.learn(
                    ofCars, known, known.cars() == 0 ? DEFAULT_AS_CARS : Math.min(OTHERS_AS_CARS, known.cars()));
            if (learned.cars() > 0) {
                distances.put(season, learned);
            }
        });
        return new Knowledge(
                today, BookOfWear.learn(wear, there.wear()), distances, seizing(pads, there.seizing()), others);
    }

    private static @Nullable LearnedSeizing seizing(List<List<PadHistory>> pads, @Nullable LearnedSeizing there) {
        if (pads.isEmpty() && there == null) {
            return null;
        }
        var hazard = there == null ? SeizingHazard.learnFrom(pads) : SeizingHazard.learnFrom(pads, there.fit());
        return new LearnedSeizing(
                hazard.fit(), pads.size(), pads.stream().mapToInt(List::size).sum());
    }
}
