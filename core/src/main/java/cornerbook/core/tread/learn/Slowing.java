package cornerbook.core.tread.learn;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.tread.TreadScale;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Learns the slowing of worn treads from the cars' slopes g of {@link cornerbook.core.tread.SlowingSlope}, all other parameters
 * being at their likeliest for each γ. It is one of all cars: a block gives way by how tall it is, whichever axle drives it, and
 * the few sets of one drive and season that came new would say too little of it. With γ̂ where the sum G of the slopes is
 * nothing, and its error allowing for readings of one car being alike (Liang and Zeger 1986, Biometrika 73:13), it is weighed
 * with the prior N(c, s²):
 *
 * <pre>
 *   v = n/(n − 1) Σ g² / (dG/dγ)²,   γ = (γ̂/v + c/s²)/(1/v + 1/s²),   standard error (1/v + 1/s²)^(−1/2)   (1)
 * </pre>
 *
 * G is searched from the prior's centre in steps and then by regula falsi in the form of Illinois (Dowell and Jarratt 1971, BIT
 * 11:168). Of fewer than {@link #LEAST_CARS} cars their own scatter is no measure of the error, and the prior stands.
 */
final class Slowing {
    /** Common practice, no source. */
    private static final int LEAST_CARS = 10;

    private static final double FARTHEST = 0.9 * TreadScale.MOST_SLOWING;
    private static final double STEP = 0.1;
    private static final double PRECISE = 0.002;
    private static final int MOST_STEPS = 20;

    private final List<Kind> kinds = new ArrayList<>();
    private double centre = WearParameters.defaults(DriveLayout.ALL).of(WearParameter.SLOWING);
    private double spread = WearParameter.SLOWING.spread(false);

    /** Cars that are alike, and where the search of their other parameters ended last. */
    private static final class Kind {
        private final AlikeCars cars;
        private final WearPrior prior;
        private WearLearner.Place place;

        private Kind(AlikeCars cars, WearPrior prior, WearLearner.Place start) {
            this.cars = cars;
            this.prior = prior;
            place = start;
        }

        Map<String, Double> slopes(double slowing) {
            place = new WearLearner(cars, prior.knowing(WearParameter.SLOWING, slowing)).maximise(place);
            return cars.slowingSlopes(place.at());
        }
    }

    /** What was learned. */
    record Found(double value, double standardError) {}

    /** A slowing and the sum of slopes there. */
    private record Point(double slowing, double slope, double squares, int cars) {
        /** By how much the sum falls on the way to another, for each 1 of slowing. */
        double fallTo(Point other) {
            return (slope - other.slope) / (other.slowing - slowing);
        }

        Point halved() {
            return new Point(slowing, slope / 2, squares, cars);
        }
    }

    /**
     * Adds the sets of cars that are alike. Of their priors the surest is weighed with what is found: other shops' cars, too,
     * taught one slowing for all, so that no two priors tell different things.
     *
     * @param cameNew their sets that came new
     * @param start near their likeliest parameters
     */
    void add(AlikeCars cameNew, WearPrior prior, WearLearner.Place start) {
        kinds.add(new Kind(cameNew, prior, start));
        if (prior.spread(WearParameter.SLOWING) < spread) {
            spread = prior.spread(WearParameter.SLOWING);
            centre = prior.centre().of(WearParameter.SLOWING);
        }
    }

    /** From all sets that were added. */
    Found find() {
        var from = at(centre);
        if (from.cars < LEAST_CARS) {
            return new Found(centre, spread);
        }
        var to = from;
        double step = Math.copySign(STEP, from.slope);
        while (from.slope * to.slope > 0 && Math.abs(to.slowing) < FARTHEST) {
            from = to;
            to = at(Math.clamp(from.slowing + step, -FARTHEST, FARTHEST));
        }
        double fall = from.fallTo(to);
        var nothing = from.slope * to.slope > 0 ? to : between(from, to);
        double variance = nothing.cars / (nothing.cars - 1.0) * nothing.squares / (fall * fall);
        if (!(fall > 0 && variance > 0)) {
            return new Found(centre, spread);
        }
        double precision = 1 / variance + 1 / (spread * spread);
        double value = (nothing.slowing / variance + centre / (spread * spread)) / precision;
        return new Found(value, 1 / Math.sqrt(precision));
    }

    /** Where the sum is nothing between two points of which it is above at one and below at the other. */
    private Point between(Point one, Point other) {
        var kept = one;
        var last = other;
        for (int step = 0; step < MOST_STEPS && Math.abs(last.slowing - kept.slowing) > PRECISE; step++) {
            var next = at(last.slowing + last.slope / kept.fallTo(last));
            if (Math.abs(next.slowing - last.slowing) < PRECISE) {
                return next;
            }
            kept = next.slope * last.slope < 0 ? last : kept.halved();
            last = next;
        }
        return last;
    }

    private Point at(double slowing) {
        var byCar = new TreeMap<String, Double>();
        kinds.forEach(kind -> kind.slopes(slowing).forEach((car, slope) -> byCar.merge(car, slope, Double::sum)));
        return new Point(
                slowing,
                byCar.values().stream().mapToDouble(Double::doubleValue).sum(),
                byCar.values().stream().mapToDouble(slope -> slope * slope).sum(),
                byCar.size());
    }
}
