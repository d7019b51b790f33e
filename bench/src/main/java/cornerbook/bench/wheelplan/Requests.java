package cornerbook.bench.wheelplan;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.PlanRules;
import cornerbook.core.wheelplan.WheelState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Invented requests in whole numbers, so that a solver over integers gets them without rounding: depths in µm, rates in µm
 * per 1000 km, distances in km. The seasons together are about as long as the set's life.
 */
public final class Requests {
    static final double LIMIT_MM = 3;
    private static final String SIZE = "235/45R19";
    private static final String OTHER_SIZE = "255/40R19";

    private Requests() {}

    /** Tyres of one size that may go anywhere, seasons of the same distance. */
    public static PlanRequest free(SplittableRandom random, int seasons) {
        return request(random, seasons, false, false, false, PlanRules.TYRES_ONLY);
    }

    /** Any kind of tyre, with any rules, the first season shorter or longer than the rest. */
    public static PlanRequest any(SplittableRandom random, int seasons) {
        var rules = new PlanRules(
                true,
                true,
                random.nextInt(3) == 0 ? whole(random, 400, 2500) / 1000 : null,
                random.nextInt(3) == 0
                        ? new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, whole(random, 800, 3000) / 1000)
                        : null,
                random.nextInt(4) == 0 ? whole(random, 0, 1500) / 1000 * random.nextInt(2) : null);
        return request(random, seasons, random.nextBoolean(), random.nextInt(4) == 0, random.nextInt(5) == 0, rules);
    }

    private static PlanRequest request(
            SplittableRandom random,
            int seasons,
            boolean otherFirstSeason,
            boolean directional,
            boolean staggered,
            PlanRules rules) {
        double baseUm = whole(random, 6000, 9000);
        var corners = new ArrayList<>(List.of(Corner.values()));
        for (int i = 3; i > 0; i--) {
            Collections.swap(corners, i, random.nextInt(i + 1));
        }
        double slackUm = 0;
        var wheels = new ArrayList<WheelState>();
        for (int i = 0; i < 4; i++) {
            var depths = new ArrayList<Double>();
            for (int g = 0; g < 3; g++) {
                depths.add((baseUm + whole(random, 0, 800)) / 1000);
            }
            slackUm += 1000 * (Collections.min(depths) - LIMIT_MM);
            var size = staggered && corners.get(i).axle() == Axle.REAR ? OTHER_SIZE : SIZE;
            wheels.add(new WheelState("wheel " + i, size, directional, depths, corners.get(i)));
        }
        double rateSum = 0;
        var rates = new EnumMap<Corner, List<Double>>(Corner.class);
        for (var corner : Corner.values()) {
            var byGroove = new ArrayList<Double>();
            double cornerRate = whole(random, 120, 260);
            for (int g = 0; g < 3; g++) {
                byGroove.add((cornerRate + whole(random, 0, 30)) / 1000);
            }
            rateSum += 1000 * Collections.max(byGroove);
            rates.put(corner, byGroove);
        }
        double seasonKm = Math.rint(1000 * slackUm / rateSum / seasons);
        var distances = new ArrayList<Double>();
        for (int s = 0; s < seasons; s++) {
            distances.add((s == 0 && otherFirstSeason ? whole(random, 1000, 9000) : seasonKm) / 1000);
        }
        var sizes = staggered ? Map.of(Axle.FRONT, SIZE, Axle.REAR, OTHER_SIZE) : Map.<Axle, String>of();
        return new PlanRequest(wheels, rates, sizes, LIMIT_MM, distances, rules);
    }

    private static double whole(SplittableRandom random, int from, int to) {
        return random.nextInt(from, to + 1);
    }
}
