package cornerbook.core.tread;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.TreeMap;

/**
 * How much each reading of a set counts. Some readings are far off: a stone in the groove, the wear bar, a slip of the pen.
 * A reading's error is therefore a mixture of two Gaussians,
 *
 * <pre>  e ~ (1 − ε) N(0, σ²) + ε N(0, (κσ)²)                                                            (1)</pre>
 *
 * and given what all others say of it (mean m and variance v, the visit's offset included), the chance that it is one of those
 * is
 *
 * <pre>  r = ε N(y; m, v + κ²σ²)/(ε N(y; m, v + κ²σ²) + (1 − ε) N(y; m, v + σ²))                         (2)</pre>
 *
 * It counts 1 − r + r/κ² of a reading: what the mixture moves is moved by as much, to first order in v/σ² (each Gaussian of
 * it moves the mean by v/σ² and v/(κσ)² of the reading's distance). With A, k_v and h_v as in {@link WearModel} and w the weights
 * so far, all others are left as
 *
 * <pre>
 *   (y − m) = q_i/Q_ii,   v = 1/Q_ii − σ²/w_i,   q_i = w_i (e_i − k Σ w e)/σ²,
 *   Q_ii = w_i (1 − k w_i)/σ² − w_i² (x_i − k h)ᵀ A⁻¹ (x_i − k h)/σ⁴                                    (3)
 * </pre>
 *
 * from one posterior, e being what it leaves of the readings; of those that it leaves by less than σ nothing is asked. Where readings are only as far off as a Gaussian has them,
 * nothing is weighed again. Checked against a general sampler by {@code DoubtfulReadingsReferenceTest}.
 */
final class DoubtfulReadings {
    /** ε: one reading in a hundred. Common practice, no source. */
    static final double SHARE = 0.01;
    /** κ. Common practice, no source. */
    static final double WIDER = 4;
    /** What counts another way by so little is left. */
    private static final double HARDLY_ANOTHER = 0.1;
    /** Readings that are far off hide each other: looked at again so often at most. */
    private static final int ROUNDS = 3;

    private static final double EVEN = 0.5;
    /** Of a reading's own precision: what rounding leaves of nothing. */
    private static final double LEAST_SHARE = 1e-9;

    private final WearModel model;
    private final List<NewDepth> newDepths;
    private final List<TreadReading> readings;
    private final double noise;
    private final double slowing;

    private double[] counts;
    private SetDesign design;
    private GaussianPosterior posterior;

    /** Weighs readings. */
    DoubtfulReadings(WearModel model, List<NewDepth> newDepths, List<TreadReading> readings, Drivers drivers) {
        this.model = model;
        this.newDepths = newDepths;
        this.readings = readings;
        double sd = model.parameters().readingSdMm();
        noise = sd * sd;
        slowing = model.parameters().of(WearParameter.SLOWING);
        counts = new double[readings.size()];
        Arrays.fill(counts, 1);
        design = new SetDesign(newDepths, readings, counts, drivers, model.parameters());
        posterior = model.gaussian(design);
        for (int round = 0; round < ROUNDS; round++) {
            var better = counts(counts);
            if (isNear(counts, better)) {
                break;
            }
            counts = better;
            design = new SetDesign(newDepths, readings, counts, drivers, model.parameters());
            posterior = model.gaussian(design);
        }
    }

    /** The readings as sums, each counted for what it is worth. */
    SetDesign design() {
        return design;
    }

    /**
     * The readings without those of a tyre at a visit one of which is more likely far off than not: what is left of a tyre's
     * grooves is read together or not at all, which is what learning needs to take a set apart.
     */
    List<TreadReading> believed() {
        var doubted = new HashSet<List<Integer>>();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] < EVEN) {
                doubted.add(looked(readings.get(i)));
            }
        }
        return readings.stream()
                .filter(reading -> !doubted.contains(looked(reading)))
                .toList();
    }

    private static List<Integer> looked(TreadReading reading) {
        return List.of(reading.visit(), reading.tyre());
    }

    /** The posterior of that while the car's factor is taken as Gaussian. */
    GaussianPosterior posterior() {
        return posterior;
    }

    private static boolean isNear(double[] counts, double[] better) {
        for (int i = 0; i < counts.length; i++) {
            if (Math.abs(better[i] - counts[i]) > HARDLY_ANOTHER) {
                return false;
            }
        }
        return true;
    }

    private double[] counts(double[] before) {
        var weights = new double[before.length][];
        var left = new double[before.length];
        var all = new TreeMap<Integer, Double>();
        for (int i = 0; i < before.length; i++) {
            var reading = readings.get(i);
            double newMm = newDepths.get(reading.tyre()).depthMm();
            weights[i] = design.weights(reading);
            left[i] = new TreadScale(newMm, slowing).effective(reading.depthMm()) - newMm - posterior.mean(weights[i]);
            all.merge(reading.visit(), before[i] * left[i], Double::sum);
        }
        var counts = before.clone();
        int at = 0;
        for (var ofVisit : all.entrySet()) {
            var occasion = design.occasions().get(at++);
            double shared = model.shared(occasion);
            double[] withTogether = new double[0];
            for (int i = 0; i < counts.length; i++) {
                double off = left[i] - shared * ofVisit.getValue();
                if (readings.get(i).visit() != ofVisit.getKey() || (off * off < noise && before[i] == 1)) {
                    continue;
                }
                if (withTogether.length == 0) {
                    withTogether = posterior.times(occasion.weights());
                }
                double spread = squared(weights[i])
                        - 2 * shared * dot(weights[i], withTogether)
                        + shared * shared * dot(occasion.weights(), withTogether);
                counts[i] = counts(before[i], off, shared, spread);
            }
        }
        return counts;
    }

    /** Variance of a weighted sum of the unknowns, few of which have a weight. */
    private double squared(double[] weights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            for (int j = 0; weights[i] != 0 && j < weights.length; j++) {
                if (weights[j] != 0) {
                    sum += weights[i] * weights[j] * posterior.covariance(i, j);
                }
            }
        }
        return sum;
    }

    /** Equation (3), and what the reading counts by it. */
    private double counts(double before, double off, double shared, double spread) {
        double precision = before * (1 - shared * before) / noise - before * before * spread / (noise * noise);
        // A reading by which alone something is known says nothing against itself; rounding must not either.
        if (!(precision > LEAST_SHARE / noise)) {
            return before;
        }
        double fromOthers = before * off / noise / precision;
        return counts(fromOthers * fromOthers, Math.max(0, 1 / precision - noise / before));
    }

    /** What a reading counts, from (2). */
    private double counts(double squareOff, double variance) {
        double plain = variance + noise;
        double wide = variance + WIDER * WIDER * noise;
        double odds = SHARE / (1 - SHARE) * Math.sqrt(plain / wide) * Math.exp(squareOff / 2 * (1 / plain - 1 / wide));
        double doubtful = 1 / (1 + 1 / odds);
        return 1 - doubtful + doubtful / (WIDER * WIDER);
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
