package cornerbook.core.brake.burnish;

import cornerbook.core.corner.Axle;
import java.util.ArrayList;

/**
 * How many stops, how far apart, bring the disc of an axle into the burnish band and keep it there. Peaks climb towards a
 * level that falls as the spacing grows; the planner takes the shortest spacing whose level stays in the band, and as many
 * stops as it takes to enter the band, but no fewer than asked. Model and sources: {@link DiscHeat}.
 */
public final class BurnishPlanner {
    /** Stops after which another one no longer changes the peak. */
    private static final int MOST_STOPS = 60;

    private static final double COOLED_DOWN_K = 30;
    private static final double SPACING_TOLERANCE_S = 0.01;

    private BurnishPlanner() {}

    public static BurnishPlan plan(BrakedCar car, DiscBody disc, Axle axle, BurnishStop stop, BurnishTarget target) {
        var heat = new DiscHeat(car, disc, axle);
        double spacingS = spacing(heat, stop, target);
        var peaks = new ArrayList<Double>();
        double hotterByK = 0;
        boolean entered = false;
        while (peaks.size() < target.fewestStops() || (!entered && peaks.size() < MOST_STOPS)) {
            if (!peaks.isEmpty()) {
                hotterByK = heat.afterDriving(hotterByK, stop.fromKmh(), spacingS);
            }
            hotterByK = heat.afterStop(stop, hotterByK);
            peaks.add(target.airC() + hotterByK);
            entered = peaks.getLast() >= target.lowestC();
        }
        double hottestC = peaks.getLast();
        var warning = hottestC > target.limitC()
                ? BurnishPlan.Warning.EXCEEDS_THE_LIMIT
                : hottestC > target.highestC()
                        ? BurnishPlan.Warning.GETS_TOO_HOT
                        : entered ? BurnishPlan.Warning.NONE : BurnishPlan.Warning.STAYS_TOO_COLD;
        return new BurnishPlan(
                peaks.size(),
                spacingS,
                heat.energyJ(stop),
                heat.adiabaticRiseK(stop),
                peaks,
                coolDown(heat, stop, hotterByK),
                warning);
    }

    /** The shortest spacing allowed whose final level stays in the band; the longest when none does. */
    private static double spacing(DiscHeat heat, BurnishStop stop, BurnishTarget target) {
        double highestK = target.highestC() - target.airC();
        double low = target.shortestSpacingS();
        double high = target.longestSpacingS();
        if (level(heat, stop, low) <= highestK) {
            return low;
        }
        if (level(heat, stop, high) > highestK) {
            return high;
        }
        while (high - low > SPACING_TOLERANCE_S) {
            double middle = 0.5 * (low + high);
            if (level(heat, stop, middle) <= highestK) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** Where the peaks settle. A stop is affine in what it starts from, so the fixed point is closed: x = r (s x) + c. */
    private static double level(DiscHeat heat, BurnishStop stop, double spacingS) {
        double cold = heat.afterStop(stop, 0);
        double retained = heat.afterStop(stop, 1) - cold;
        return cold / (1 - retained * heat.afterDriving(1, stop.fromKmh(), spacingS));
    }

    private static double coolDown(DiscHeat heat, BurnishStop stop, double hotterByK) {
        return hotterByK <= COOLED_DOWN_K
                ? 0
                : Math.log(hotterByK / COOLED_DOWN_K) / heat.coolingRatePerS(stop.fromKmh());
    }
}
