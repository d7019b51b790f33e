package cornerbook.core.tread;

import java.util.ArrayList;
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
 * from one posterior, e being what it leaves of the readings. Where readings are only as far off as a Gaussian has them,
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

    private final WearModel model;
    private final List<NewDepth> newDepths;
    private final List<TreadReading> readings;
    private final double noise;
    private final double slowing;

    private double[] counts;
    private SetDesign design;
    private GaussianPosterior posterior;

    /** Weighs readings. */
    DoubtfulReadings(WearModel model, List<NewDepth> newDepths, List<TreadReading> readings) {
        this.model = model;
        this.newDepths = newDepths;
        this.readings = readings;
        double sd = model.parameters().readingSdMm();
        noise = sd * sd;
        slowing = model.parameters().of(WearParameter.SLOWING);
        counts = new double[readings.size()];
        Arrays.fill(counts, 1);
        design = new SetDesign(newDepths, readings, counts, model.parameters());
        posterior = model.gaussian(design);
        for (int round = 0; round < ROUNDS; round++) {
            var better = counts(counts);
            if (isNear(counts, better)) {
                break;
            }
            counts = better;
            design = new SetDesign(newDepths, readings, counts, model.parameters());
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
        var byVisit = new TreeMap<Integer, List<Integer>>();
        for (int i = 0; i < before.length; i++) {
            byVisit.computeIfAbsent(readings.get(i).visit(), visit -> new ArrayList<>())
                    .add(i);
        }
        var counts = before.clone();
        int at = 0;
        for (var ofVisit : byVisit.values()) {
            ofVisit(design.occasions().get(at++), ofVisit, before, counts);
        }
        return counts;
    }

    private void ofVisit(SetDesign.Occasion occasion, List<Integer> visit, double[] before, double[] counts) {
        double shared = model.shared(occasion);
        var together = occasion.weights();
        var withTogether = posterior.times(together);
        double ofTogether = dot(together, withTogether);
        var left = new double[readings.size()];
        double all = 0;
        for (int i : visit) {
            var reading = readings.get(i);
            double newMm = newDepths.get(reading.tyre()).depthMm();
            left[i] = new TreadScale(newMm, slowing).effective(reading.depthMm())
                    - newMm
                    - posterior.mean(design.weights(reading));
            all += before[i] * left[i];
        }
        for (int i : visit) {
            var weights = design.weights(readings.get(i));
            double w = before[i];
            double spread = posterior.covariance(weights, weights)
                    - 2 * shared * dot(weights, withTogether)
                    + shared * shared * ofTogether;
            double precision = w * (1 - shared * w) / noise - w * w * spread / (noise * noise);
            double off = w * (left[i] - shared * all) / noise / precision;
            double variance = Math.max(0, 1 / precision - noise / w);
            counts[i] = counts(off * off, variance);
        }
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
