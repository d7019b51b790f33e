package cornerbook.core.finding;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Mileage;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.season.DistanceHistory;
import cornerbook.core.season.DistancePerDay;
import cornerbook.core.tread.CornerDistances;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What each wheel had run at each corner by each visit, and how far the car ran per day in past seasons. Between two
 * visits the wheels are taken to have run where the later visit found them. How far a car runs a day is its driver's: of another
 * one the seasons before say nothing, nor does the one in which both drove. Of how much the seasons of a car differ they do, so
 * that a book that learns from all of them leaves room for who comes next.
 */
public final class RunHistory {
    private static final double THOUSAND = 1000;

    private final Map<String, Map<String, CornerDistances>> runByVisit = new HashMap<>();
    private final Map<String, Corner> lastCorner = new HashMap<>();
    private final Map<SeasonKind, List<Double>> kmPerDay = new HashMap<>();
    private final Map<SeasonKind, List<Double>> kmPerDayOfDriver = new HashMap<>();
    private final Knowledge knowledge;
    private final Mileage mileage;
    private final List<Double> kmPerDayOfDriverAll = new ArrayList<>();

    public RunHistory(CarHistory history, List<Visit> visits, Knowledge knowledge) {
        this.knowledge = knowledge;
        mileage = new Mileage(visits);
        var run = new HashMap<String, CornerDistances>();
        @Nullable Visit before = null;
        for (int v = 0; v < visits.size(); v++) {
            var visit = visits.get(v);
            if (before != null) {
                int season = v;
                double distanceKm = mileage.sinceFirstKm(visit) - mileage.sinceFirstKm(before);
                visit.arrivedOn()
                        .forEach((corner, tag) -> run.merge(
                                tag,
                                CornerDistances.NONE.plus(season, corner, distanceKm / THOUSAND),
                                (known, more) -> known.plus(season, corner, distanceKm / THOUSAND)));
                mileage.kmPerDayUntil(visit).ifPresent(average -> countSeason(history, visit, average));
                if (AnotherDriver.came(visit)) {
                    kmPerDayOfDriver.clear();
                    kmPerDayOfDriverAll.clear();
                }
            }
            visit.arrivedOn().forEach((corner, tag) -> lastCorner.put(tag, corner));
            runByVisit.put(visit.id(), Map.copyOf(run));
            before = visit;
        }
    }

    /** What the car is expected to run a day on the wheels that it leaves a visit on, from its visits until then. */
    public static double kmPerDayAfter(CarHistory history, Visit visit) {
        var until = history.visits().stream()
                .filter(other -> !other.date().isAfter(visit.date()))
                .toList();
        var wheels = visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
        var season = wheels.values().stream()
                .findFirst()
                .flatMap(history::findSetOf)
                .map(WheelSet::season)
                .orElse(SeasonKind.ALL_SEASON);
        return new RunHistory(history, until, Knowledge.NONE).next(season).meanKm();
    }

    public CornerDistances run(Visit visit, String wheelTag) {
        return runByVisit.getOrDefault(visit.id(), Map.of()).getOrDefault(wheelTag, CornerDistances.NONE);
    }

    /** Where the wheel ran last before or at the newest visit; null when it never ran. */
    @Nullable
    public Corner lastCorner(String wheelTag) {
        return lastCorner.get(wheelTag);
    }

    /** What cannot be believed of the odometer, one sentence each. */
    public List<Said> doubts() {
        return mileage.doubts();
    }

    public DistancePerDay next(SeasonKind season) {
        return DistanceHistory.next(seasons(season), knowledge.distance(season));
    }

    /** Average of each past season of that kind of who drives now, or of all his seasons while there is none of it. */
    List<Double> seasons(SeasonKind season) {
        return kmPerDayOfDriver.getOrDefault(season, kmPerDayOfDriverAll);
    }

    /** Where the distance per day of a season kind comes from. */
    public DistanceBasis distanceBasis(SeasonKind season) {
        int own = seasons(season).size();
        var others = knowledge.originOfDistance(season);
        if (own > 0) {
            return new DistanceBasis.OwnSeasons(
                    own, OwnShare.of(DistanceHistory.ownShare(own, knowledge.distance(season))), others);
        }
        var ofBook = knowledge.distances().get(season);
        if (ofBook != null) {
            return new DistanceBasis.CarsOfTheBook(ofBook.cars(), others);
        }
        var prior = knowledge.distance(season);
        var perDay = new PlusMinus(prior.meanKm(), prior.carSdKm(), "km", 0);
        return others == null
                ? new DistanceBasis.UsualDistance(perDay)
                : new DistanceBasis.CarsOfOthers(perDay, others);
    }

    /** Average of each past season of that kind, whoever drove. */
    public List<Double> seasonsOfKind(SeasonKind season) {
        return kmPerDay.getOrDefault(season, List.of());
    }

    private void countSeason(CarHistory history, Visit visit, double average) {
        kmPerDayOfDriverAll.add(average);
        history.findSetOn(visit.arrivedOn()).ifPresent(set -> {
            kmPerDay.computeIfAbsent(set.season(), key -> new ArrayList<>()).add(average);
            kmPerDayOfDriver
                    .computeIfAbsent(set.season(), key -> new ArrayList<>())
                    .add(average);
        });
    }
}
