package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * The readings of one wheel set on one car as sums that no parameter changes: with x the weights of the unknowns in a
 * reading, y its depth less the stated one, and q its bend ({@link TreadScale}), the sums of xxᵀ, xy, xq, and for each
 * visit those of x, y and q, each reading times what it counts.
 *
 * <p>The unknowns: for each groove the depth of each tyre when new to the book less its stated depth, then for each groove
 * the rate of each corner, then what each of the earlier drivers adds to the car's factor, then what each season added to all
 * rates.
 */
final class SetDesign {
    private static final int GROOVES = Spot.values().length;

    private final List<NewDepth> newDepths;
    /** In ascending order. */
    private final int[] seasons;

    private final Drivers drivers;
    private final double[] usualRates = new double[RatePrior.CORNERS];
    private final double[] seasonShares = new double[RatePrior.CORNERS];
    private final List<Occasion> occasions;
    private final double[] gram;
    private final double[] depthCross;
    private final double[] bendCross;

    /** The readings of one visit. */
    static final class Occasion {
        private final double[] weights;
        private double depth;
        private double bend;
        private double readings;

        private Occasion(int unknowns) {
            weights = new double[unknowns];
        }

        double[] weights() {
            return weights;
        }

        /** Sum of the readings less the stated depths, on the scale of effective depth. */
        double sum(double slowing) {
            return depth + slowing * bend;
        }

        /** How many readings all of them are worth. */
        double readings() {
            return readings;
        }
    }

    /** Sums up readings, each of which counts whole. */
    SetDesign(List<NewDepth> newDepths, List<TreadReading> readings, Drivers drivers, WearParameters proportions) {
        this(newDepths, readings, whole(readings.size()), drivers, proportions);
    }

    private static double[] whole(int readings) {
        var counts = new double[readings];
        Arrays.fill(counts, 1);
        return counts;
    }

    /**
     * Sums up readings.
     *
     * @param counts how much of a reading each one is worth, above 0
     * @param proportions whose mean rates say how what a season or a driver adds is spread over the corners
     * @throws IllegalArgumentException when a reading names a tyre that is not there
     */
    SetDesign(
            List<NewDepth> newDepths,
            List<TreadReading> readings,
            double[] counts,
            Drivers drivers,
            WearParameters proportions) {
        this.newDepths = List.copyOf(newDepths);
        this.drivers = drivers;
        for (var corner : Corner.values()) {
            usualRates[corner.ordinal()] = proportions.rate(corner.axle());
            seasonShares[corner.ordinal()] = proportions.share(corner.axle());
        }
        seasons = seasons(readings);
        int unknowns = unknowns();
        gram = new double[unknowns * unknowns];
        depthCross = new double[unknowns];
        bendCross = new double[unknowns];
        var byVisit = new TreeMap<Integer, Occasion>();
        for (int i = 0; i < counts.length; i++) {
            var reading = readings.get(i);
            add(reading, counts[i], byVisit.computeIfAbsent(reading.visit(), visit -> new Occasion(unknowns)));
        }
        occasions = new ArrayList<>(byVisit.values());
    }

    /** Plain loops, for every forecast passes here. */
    private static int[] seasons(List<TreadReading> readings) {
        var seasons = new int[0];
        for (var reading : readings) {
            for (var leg : reading.run().legs()) {
                int place = Arrays.binarySearch(seasons, leg.season());
                if (place < 0) {
                    int at = -place - 1;
                    var more = Arrays.copyOf(seasons, seasons.length + 1);
                    System.arraycopy(seasons, at, more, at + 1, seasons.length - at);
                    more[at] = leg.season();
                    seasons = more;
                }
            }
        }
        return seasons;
    }

    private void add(TreadReading reading, double count, Occasion occasion) {
        if (reading.tyre() >= newDepths.size()) {
            throw new IllegalArgumentException(
                    "reading of tyre " + reading.tyre() + ", expected 0 to " + (newDepths.size() - 1));
        }
        double newMm = newDepths.get(reading.tyre()).depthMm();
        double y = reading.depthMm() - newMm;
        double q = TreadScale.bend(reading.depthMm(), newMm);
        int unknowns = unknowns();
        var x = weights(reading);
        for (int i = 0; i < unknowns; i++) {
            if (x[i] == 0) {
                continue;
            }
            for (int j = 0; j < unknowns; j++) {
                gram[i * unknowns + j] += count * x[i] * x[j];
            }
            depthCross[i] += count * x[i] * y;
            bendCross[i] += count * x[i] * q;
            occasion.weights[i] += count * x[i];
        }
        occasion.depth += count * y;
        occasion.bend += count * q;
        occasion.readings += count;
    }

    /** Weights of the unknowns in a reading. */
    double[] weights(TreadReading reading) {
        var weights = new double[unknowns()];
        weigh(reading.groove(), reading.tyre(), reading.run(), weights);
        return weights;
    }

    /** Weights of the unknowns in the effective depth of a tyre less its stated depth. */
    void weigh(Spot groove, int tyre, CornerDistances run, double[] weights) {
        weights[depth(groove, tyre)] = 1;
        for (var leg : run.legs()) {
            weights[firstRate() + RatePrior.place(groove, leg.corner())] -= leg.thousandKm();
            int driver = drivers.of(leg.season());
            if (driver < drivers.earlier()) {
                weights[firstRate() + RatePrior.RATES + driver] -=
                        usualRates[leg.corner().ordinal()] * leg.thousandKm();
            }
            int season = Arrays.binarySearch(seasons, leg.season());
            if (season >= 0) {
                weights[firstSeason() + season] -= seasonShare(leg.corner()) * leg.thousandKm();
            }
        }
    }

    /** Sum over the seasons that no reading tells of, of the products of what two tyres ran in them, (1000 km)². */
    double unseenTogether(CornerDistances run, CornerDistances other) {
        double sum = 0;
        for (var leg : run.legs()) {
            if (Arrays.binarySearch(seasons, leg.season()) >= 0) {
                continue;
            }
            for (var beside : other.legs()) {
                sum += leg.season() == beside.season() ? inSeason(leg) * inSeason(beside) : 0;
            }
        }
        return sum;
    }

    private double inSeason(CornerDistances.Leg leg) {
        return seasonShare(leg.corner()) * leg.thousandKm();
    }

    /** What a season adds at a corner against what it adds on average. */
    double seasonShare(Corner corner) {
        return seasonShares[corner.ordinal()];
    }

    Drivers drivers() {
        return drivers;
    }

    List<NewDepth> newDepths() {
        return newDepths;
    }

    int tyres() {
        return newDepths.size();
    }

    List<Occasion> occasions() {
        return occasions;
    }

    int unknowns() {
        return firstSeason() + seasons.length;
    }

    int depth(Spot groove, int tyre) {
        return groove.ordinal() * newDepths.size() + tyre;
    }

    int firstRate() {
        return GROOVES * newDepths.size();
    }

    int firstSeason() {
        return firstRate() + RatePrior.RATES + drivers.earlier();
    }

    /** Σ xxᵀ, row-major. */
    double gram(int i) {
        return gram[i];
    }

    /** Σ xy on the scale of effective depth. */
    double cross(int unknown, double slowing) {
        return depthCross[unknown] + slowing * bendCross[unknown];
    }
}
