package cornerbook.core.tread.learn;

import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * The readings of one {@link GroovePart} of a wheel set as sums that no parameter changes. With x the weights of the unknowns
 * in a value, y its depth less the stated one and q its bend, these are the sums of xxᵀ, xy, xq, yy, yq, qq, and for each
 * visit those of x, y and q, each weighed by the value's load.
 *
 * <p>The unknowns: for each value of the part the depth of each tyre when new to the book less its stated depth, then for
 * each value the rate of each corner, then, where the part has a load, what each season added.
 */
final class PartSums {
    private final GroovePart part;
    private final int copies;
    private final List<NewDepth> newDepths;
    private final List<Integer> seasons;
    private final double[] gram;
    private final double[] depthCross;
    private final double[] bendCross;
    private final List<Occasion> occasions;
    private final int values;
    private double depthSquare;
    private double depthBend;
    private double bendSquare;

    /**
     * One value of a part.
     *
     * @param value number of the value in its part
     * @param tyre number among the tyres that were read
     * @param depthMm less the stated depth; of each copy of the part
     * @param bendMm of each copy
     */
    record Value(int visit, int value, int tyre, CornerDistances run, List<Double> depthMm, List<Double> bendMm) {}

    /** What was read at one visit, and shares its offset. */
    static final class Occasion {
        private final double[] weights;
        private double depth;
        private double bend;
        private double loads;

        private Occasion(int unknowns) {
            weights = new double[unknowns];
        }

        double[] weights() {
            return weights;
        }

        /** On the scale of effective depth. */
        double sum(double slowing) {
            return depth + slowing * bend;
        }

        double bend() {
            return bend;
        }

        /** The squares of the loads, summed: how many grooves were read. */
        double loads() {
            return loads;
        }
    }

    /**
     * Sums up values.
     *
     * @param newDepths of the tyres that were read
     * @param seasons in which they ran
     * @param seasonShares what a season adds at each corner against what it adds on average
     * @param values of the same number of copies each
     */
    PartSums(
            GroovePart part,
            List<NewDepth> newDepths,
            List<Integer> seasons,
            double[] seasonShares,
            List<Value> values) {
        this.part = part;
        this.newDepths = newDepths;
        this.seasons = part.square() == 0 ? List.of() : seasons;
        copies = values.getFirst().depthMm().size();
        this.values = copies * values.size();
        int unknowns = unknowns();
        gram = new double[unknowns * unknowns];
        depthCross = new double[copies * unknowns];
        bendCross = new double[copies * unknowns];
        var byVisit = new TreeMap<Integer, Occasion>();
        for (var value : values) {
            var x = weights(value, seasonShares);
            add(value, x);
            double load = part.load(value.value());
            if (load > 0) {
                var occasion = byVisit.computeIfAbsent(value.visit(), visit -> new Occasion(unknowns));
                for (int i = 0; i < unknowns; i++) {
                    occasion.weights[i] += load * x[i];
                }
                occasion.depth += load * value.depthMm().getFirst();
                occasion.bend += load * value.bendMm().getFirst();
                occasion.loads += load * load;
            }
        }
        occasions = new ArrayList<>(byVisit.values());
    }

    private double[] weights(Value value, double[] seasonShares) {
        var x = new double[unknowns()];
        x[value.value() * tyres() + value.tyre()] = 1;
        for (var leg : value.run().legs()) {
            int corner = leg.corner().ordinal();
            x[firstRate() + value.value() * PartPrior.CORNERS + corner] -= leg.thousandKm();
            if (!seasons.isEmpty()) {
                x[firstSeason() + seasons.indexOf(leg.season())] -=
                        part.load(value.value()) * seasonShares[corner] * leg.thousandKm();
            }
        }
        return x;
    }

    private void add(Value value, double[] x) {
        int unknowns = x.length;
        for (int i = 0; i < unknowns; i++) {
            for (int j = 0; j <= i; j++) {
                gram[i * unknowns + j] += x[i] * x[j];
            }
        }
        for (int copy = 0; copy < copies; copy++) {
            double y = value.depthMm().get(copy);
            double q = value.bendMm().get(copy);
            for (int i = 0; i < unknowns; i++) {
                depthCross[copy * unknowns + i] += x[i] * y;
                bendCross[copy * unknowns + i] += x[i] * q;
            }
            depthSquare += y * y;
            depthBend += y * q;
            bendSquare += q * q;
        }
    }

    GroovePart part() {
        return part;
    }

    /** How many times the part is there, with other readings at the same distances. */
    int copies() {
        return copies;
    }

    List<NewDepth> newDepths() {
        return newDepths;
    }

    /** How many values there are, over all copies. */
    int values() {
        return values;
    }

    int tyres() {
        return newDepths.size();
    }

    int firstRate() {
        return part.size() * newDepths.size();
    }

    int firstSeason() {
        return firstRate() + part.size() * PartPrior.CORNERS;
    }

    int seasons() {
        return seasons.size();
    }

    int unknowns() {
        return firstSeason() + seasons.size();
    }

    List<Occasion> occasions() {
        return occasions;
    }

    /** Σ xxᵀ of one copy, row-major; the lower triangle. */
    double[] gram() {
        return gram;
    }

    /** Σ xy on the scale of effective depth. */
    double cross(int copy, int unknown, double slowing) {
        int place = copy * unknowns() + unknown;
        return depthCross[place] + slowing * bendCross[place];
    }

    double bendCross(int copy, int unknown) {
        return bendCross[copy * unknowns() + unknown];
    }

    /** Σ yy on the scale of effective depth, over all copies. */
    double square(double slowing) {
        return depthSquare + 2 * slowing * depthBend + slowing * slowing * bendSquare;
    }

    /** Σ yq on the scale of effective depth, over all copies. */
    double bendProduct(double slowing) {
        return depthBend + slowing * bendSquare;
    }
}
