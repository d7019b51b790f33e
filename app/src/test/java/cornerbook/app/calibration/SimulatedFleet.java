package cornerbook.app.calibration;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.TreadScale;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;

/**
 * Invented cars that wear their tyres as the corner-rate model has it, with known parameters: two to five seasons, the
 * wheels at random corners each season, three grooves. The same seed gives the same cars.
 */
final class SimulatedFleet {
    /** Deeper than tyres are, so that none wears through: a reading of a bald tyre tells the model nothing. */
    private static final double NEW_DEPTH_MM = 14;

    private static final int FEWEST_SEASONS = 2;
    private static final int MOST_SEASONS = 5;
    private static final double SHORTEST_SEASON_THOUSAND_KM = 2;
    private static final double LONGEST_SEASON_THOUSAND_KM = 6;

    private SimulatedFleet() {}

    /** One car: what was read until its last visit but one, and what was read at its last. */
    record Car(WearHistory before, List<TreadReading> last) {}

    static List<Car> make(int cars, long seed, WearParameters truth) {
        var random = new Random(seed);
        var fleet = new ArrayList<Car>();
        for (int car = 0; car < cars; car++) {
            fleet.add(car("invented-" + car, random, truth));
        }
        return fleet;
    }

    private static Car car(String name, RandomGenerator random, WearParameters truth) {
        var rates = rates(random, truth);
        var depths = new double[Corner.values().length][Spot.values().length];
        double newDepthSdMm = truth.newDepthSdMm() * Math.sqrt(0.5);
        for (var ofTyre : depths) {
            double ofAll = newDepthSdMm * random.nextGaussian();
            for (int groove = 0; groove < ofTyre.length; groove++) {
                ofTyre[groove] = NEW_DEPTH_MM + ofAll + newDepthSdMm * random.nextGaussian();
            }
        }
        var wornMm = new double[depths.length][Spot.values().length];
        var scale = new TreadScale(NEW_DEPTH_MM, truth.of(WearParameter.SLOWING));
        var run = new ArrayList<>(Collections.nCopies(depths.length, CornerDistances.NONE));
        var corners = new ArrayList<>(List.of(Corner.values()));
        var readings = new ArrayList<List<TreadReading>>();
        int seasons = random.nextInt(FEWEST_SEASONS, MOST_SEASONS + 1);
        for (int season = 0; season < seasons; season++) {
            double thousandKm = random.nextDouble(SHORTEST_SEASON_THOUSAND_KM, LONGEST_SEASON_THOUSAND_KM);
            var taken = new ArrayList<TreadReading>();
            double ofSeason = truth.of(WearParameter.SEASON_SD) * random.nextGaussian();
            double offsetMm = truth.of(WearParameter.VISIT_SD) * random.nextGaussian();
            for (int tyre = 0; tyre < depths.length; tyre++) {
                var corner = corners.get(tyre);
                var now = run.get(tyre).plus(season, corner, thousandKm);
                run.set(tyre, now);
                for (var groove : Spot.values()) {
                    int g = groove.ordinal();
                    wornMm[tyre][g] += thousandKm * (rates[corner.ordinal()][g] + ofSeason);
                    double read = scale.depth(depths[tyre][g] - wornMm[tyre][g])
                            + offsetMm
                            + truth.readingSdMm() * random.nextGaussian();
                    taken.add(new TreadReading(season, tyre, groove, now, Math.max(0, read)));
                }
            }
            readings.add(taken);
            Collections.shuffle(corners, new Random(random.nextLong()));
        }
        var last = readings.removeLast();
        var before = new WearHistory(
                name,
                DriveLayout.ALL,
                SeasonKind.WINTER,
                null,
                Collections.nCopies(depths.length, NewDepth.stated(NEW_DEPTH_MM)),
                readings.stream().flatMap(List::stream).toList());
        return new Car(before, last);
    }

    private static double[][] rates(RandomGenerator random, WearParameters truth) {
        double vehicle = truth.vehicleSpread() * random.nextGaussian();
        var rates = new double[Corner.values().length][Spot.values().length];
        for (var corner : Corner.values()) {
            double mean = corner.ordinal() < 2 ? truth.frontRateMmPer1000Km() : truth.rearRateMmPer1000Km();
            double own = truth.of(WearParameter.CORNER_SPREAD) * random.nextGaussian();
            for (int groove = 0; groove < Spot.values().length; groove++) {
                double natural = truth.of(WearParameter.GROOVE_SPREAD) * random.nextGaussian();
                rates[corner.ordinal()][groove] = mean * (1 + vehicle + own + natural);
            }
        }
        return rates;
    }
}
