package cornerbook.core.wheelplan.search;

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
import org.jspecify.annotations.Nullable;

/** Invented requests of every kind that the planner has to deal with. */
final class RandomRequests {
    static final double LIMIT_MM = 3;
    private static final String FRONT = "235/45R19";
    private static final String REAR = "255/40R19";

    private RandomRequests() {}

    /** A request with some rules on. Depths are whole micrometres and rates whole nanometres per km. */
    static PlanRequest any(SplittableRandom random, int seasons) {
        boolean directional = random.nextInt(4) == 0;
        boolean staggered = random.nextInt(5) == 0;
        int grooves = random.nextBoolean() ? 3 : 1;
        var last = new ArrayList<>(List.of(Corner.values()));
        for (int i = 3; i > 0; i--) {
            var other = random.nextInt(i + 1);
            var held = last.get(i);
            last.set(i, last.get(other));
            last.set(other, held);
        }
        boolean neverRan = random.nextInt(6) == 0;
        boolean evenWheels = random.nextInt(6) == 0;
        double baseMm = between(random, 4_500, 9_000) / 1000;
        double unevenUm = random.nextBoolean() ? 400 : 2000;
        var wheels = new ArrayList<WheelState>();
        for (int i = 0; i < 4; i++) {
            var depths = new ArrayList<Double>();
            for (int g = 0; g < grooves; g++) {
                depths.add(evenWheels ? baseMm : baseMm + between(random, 0, unevenUm) / 1000);
            }
            var size = staggered && last.get(i).axle() == Axle.REAR ? REAR : FRONT;
            @Nullable Corner ran = neverRan ? null : last.get(i);
            wheels.add(new WheelState("wheel " + i, size, directional, depths, ran));
        }
        var sizes = staggered && !neverRan ? Map.of(Axle.FRONT, FRONT, Axle.REAR, REAR) : Map.<Axle, String>of();
        var rules = new PlanRules(
                true,
                true,
                random.nextInt(3) == 0 ? between(random, 300, 2500) / 1000 : null,
                random.nextInt(3) == 0 ? allWheel(random) : null,
                random.nextInt(4) == 0 ? between(random, 0, 1500) / 1000 * random.nextInt(2) : null);
        return new PlanRequest(wheels, rates(random, grooves), sizes, LIMIT_MM, distances(random, seasons), rules);
    }

    /** The same with a fifth wheel that lies as the spare: new or worn, one that ran before or never did. */
    static PlanRequest withSpare(SplittableRandom random, int seasons) {
        var four = any(random, seasons);
        var first = four.wheels().getFirst();
        double slackMm = between(random, 500, 6000) / 1000;
        var depths = Collections.nCopies(first.depthsMm().size(), LIMIT_MM + slackMm);
        @Nullable Corner ran = random.nextBoolean() ? null : Corner.values()[random.nextInt(4)];
        var size = random.nextInt(4) == 0 ? REAR : FRONT;
        var wheels = new ArrayList<>(four.wheels());
        wheels.add(new WheelState("spare", size, first.directional(), depths, ran));
        return new PlanRequest(
                wheels, four.ratesMmPer1000Km(), four.sizeAt(), four.limitMm(), four.seasonsThousandKm(), four.rules());
    }

    private static AllWheelLimit allWheel(SplittableRandom random) {
        return random.nextBoolean()
                ? new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, between(random, 500, 3000) / 1000)
                : new AllWheelLimit(AllWheelLimit.Kind.ROLLING_CIRCUMFERENCE, between(random, 4000, 16000) / 1000);
    }

    private static Map<Corner, List<Double>> rates(SplittableRandom random, int grooves) {
        var rates = new EnumMap<Corner, List<Double>>(Corner.class);
        boolean sidesAlike = random.nextInt(3) == 0;
        for (var corner : Corner.values()) {
            var byGroove = new ArrayList<Double>();
            for (int g = 0; g < grooves; g++) {
                byGroove.add(between(random, 100, 350) / 1000);
            }
            rates.put(corner, byGroove);
        }
        if (sidesAlike) {
            rates.put(Corner.RF, rates.getOrDefault(Corner.LF, List.of()));
            rates.put(Corner.RR, rates.getOrDefault(Corner.LR, List.of()));
        }
        return rates;
    }

    private static List<Double> distances(SplittableRandom random, int seasons) {
        double usual = between(random, 1500, 12_000) / 1000;
        int kind = random.nextInt(3);
        var distances = new ArrayList<Double>();
        for (int s = 0; s < seasons; s++) {
            boolean other = kind == 2 || (kind == 1 && s == 0);
            distances.add(other ? between(random, 1000, 12_000) / 1000 : usual);
        }
        return distances;
    }

    private static double between(SplittableRandom random, double low, double high) {
        return Math.rint(low + (high - low) * random.nextDouble());
    }
}
