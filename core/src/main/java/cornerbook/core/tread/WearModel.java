package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * The corner-rate model of tread wear, one groove at a time: y = d_t − Σ_c a_c · r_c + e, with e ~ N(0, σ²), d_t ~
 * N(d_new, s_d²) and r_c = m_c (1 + u + v_c). All is Gaussian, so the posterior is exact:
 *
 * <pre>
 *   A = P0 + Xᵀ X / σ²,   A · mean = P0 · µ0 + Xᵀ y / σ²,   covariance = A⁻¹
 * </pre>
 *
 * with the prior of the rates as {@link RatePrior} has it. Grooves that were read together share one Cholesky factor.
 * Treads wear and do not grow: where the posterior of a rate reaches below what a tread can wear, it is conditioned on
 * that, see {@link WearingRates}. Assumes that wear is linear in distance at a corner and that grooves are independent given the prior. Derivation and
 * checks: docs/methods/wear.md. Accurate to about 1e-12 relative.
 */
public final class WearModel {
    private static final int CORNERS = Corner.values().length;

    private final WearParameters parameters;
    private final RatePrior prior;

    public WearModel(WearParameters parameters) {
        this.parameters = parameters;
        this.prior = new RatePrior(parameters);
    }

    /**
     * The posterior of all depths and rates; the mean of every rate is above 0.
     *
     * @param newDepths depth when new to the book, by tyre number
     * @param readings in any order; a groove without a reading keeps its prior
     * @throws IllegalArgumentException when a reading names a tyre that is not there
     */
    public WearPosterior fit(List<NewDepth> newDepths, List<TreadReading> readings) {
        int tyres = newDepths.size();
        var byGroove = byGroove(readings, tyres);
        var posteriors = new ArrayList<>(gaussian(newDepths, byGroove));
        for (int g = 0; g < posteriors.size(); g++) {
            if (!WearingRates.surelyHold(posteriors.get(g), tyres)) {
                var ofGroove = byGroove.get(g);
                posteriors.set(
                        g,
                        WearingRates.condition(
                                precision(newDepths, ofGroove), rightHandSide(newDepths, ofGroove), tyres));
            }
        }
        return new WearPosterior(tyres, posteriors);
    }

    /** The exact posterior of each groove, rates below 0 and all. */
    List<GaussianPosterior> gaussian(List<NewDepth> newDepths, List<List<TreadReading>> byGroove) {
        int size = newDepths.size() + CORNERS;
        var posteriors = new ArrayList<GaussianPosterior>();
        for (int g = 0; g < byGroove.size(); g++) {
            var shared = g > 0 && sameDesign(byGroove.get(g - 1), byGroove.get(g))
                    ? posteriors.get(g - 1).precision()
                    : null;
            var factor = shared != null ? shared : new PosteriorPrecision(precision(newDepths, byGroove.get(g)), size);
            posteriors.add(factor.solve(rightHandSide(newDepths, byGroove.get(g))));
        }
        return posteriors;
    }

    /** The readings of each groove, in the order of {@link Spot}. */
    static List<List<TreadReading>> byGroove(List<TreadReading> readings, int tyres) {
        var byGroove = new ArrayList<List<TreadReading>>();
        for (var groove : Spot.values()) {
            byGroove.add(readingsOf(groove, readings, tyres));
        }
        return byGroove;
    }

    private static List<TreadReading> readingsOf(Spot groove, List<TreadReading> readings, int tyres) {
        var found = new ArrayList<TreadReading>(readings.size());
        for (var reading : readings) {
            if (reading.tyre() >= tyres) {
                throw new IllegalArgumentException(
                        "reading of tyre " + reading.tyre() + ", expected 0 to " + (tyres - 1));
            }
            if (reading.groove() == groove) {
                found.add(reading);
            }
        }
        return found;
    }

    /** Whether the same tyres were read after the same distances, in the same order. */
    static boolean sameDesign(List<TreadReading> one, List<TreadReading> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            var a = one.get(i);
            var b = other.get(i);
            if (a.tyre() != b.tyre() || !a.run().equals(b.run())) {
                return false;
            }
        }
        return true;
    }

    private double[] precision(List<NewDepth> newDepths, List<TreadReading> readings) {
        int tyres = newDepths.size();
        int size = tyres + CORNERS;
        var precision = new double[size * size];
        for (int t = 0; t < tyres; t++) {
            precision[t * size + t] = 1 / square(newDepths.get(t).sdMm(parameters));
        }
        for (int c = 0; c < CORNERS; c++) {
            for (int k = 0; k < CORNERS; k++) {
                precision[(tyres + c) * size + tyres + k] = prior.precision(c, k);
            }
        }
        double weight = 1 / square(parameters.readingSdMm());
        var run = new double[CORNERS];
        for (var reading : readings) {
            distances(reading.run(), run);
            int t = reading.tyre();
            precision[t * size + t] += weight;
            for (int c = 0; c < CORNERS; c++) {
                precision[(tyres + c) * size + t] -= weight * run[c];
                for (int k = 0; k <= c; k++) {
                    precision[(tyres + c) * size + tyres + k] += weight * run[c] * run[k];
                }
            }
        }
        return precision;
    }

    private double[] rightHandSide(List<NewDepth> newDepths, List<TreadReading> readings) {
        int tyres = newDepths.size();
        var right = new double[tyres + CORNERS];
        for (int t = 0; t < tyres; t++) {
            right[t] = newDepths.get(t).depthMm() / square(newDepths.get(t).sdMm(parameters));
        }
        for (int c = 0; c < CORNERS; c++) {
            right[tyres + c] = prior.weightedMean(c);
        }
        double weight = 1 / square(parameters.readingSdMm());
        var run = new double[CORNERS];
        for (var reading : readings) {
            distances(reading.run(), run);
            right[reading.tyre()] += weight * reading.depthMm();
            for (int c = 0; c < CORNERS; c++) {
                right[tyres + c] -= weight * run[c] * reading.depthMm();
            }
        }
        return right;
    }

    private static void distances(CornerDistances run, double[] into) {
        into[0] = run.leftFront();
        into[1] = run.rightFront();
        into[2] = run.leftRear();
        into[3] = run.rightRear();
    }

    private static double square(double value) {
        return value * value;
    }
}
