package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.numeric.TruncatedNormal;

/**
 * The condition that treads wear: no corner's rate is below {@link #LEAST_MM_PER_1000_KM}. Readings that contradict each
 * other, as by a slip of the pen, pull the Gaussian posterior of a rate to nothing and below; conditioned on the floor it
 * stays where a rate can be. The truncated posterior is no longer Gaussian; the Gaussian next to it is found by
 * expectation propagation (Minka 2001, UAI 17:362): each corner's condition becomes one more observation of its rate, of
 * precision τ and weight ν, such that mean and variance of the rate are those of {@link TruncatedNormal} given all others.
 * With τ ≥ 0 the precision stays positive definite, and at the fixed point each rate's mean lies above the floor by its
 * standard deviation or more.
 *
 * <p>Where every rate's mean lies {@link #SURELY_ABOVE} standard deviations above the floor, less than 1 % of the
 * posterior is cut off and its mean would move by less than 2 % of a standard deviation: then it stays as it is.
 */
final class WearingRates {
    /** One millimetre in a million km: less than any tread wears. Common practice, no source. */
    static final double LEAST_MM_PER_1000_KM = 1e-3;

    private static final double SURELY_ABOVE = 2.5;
    private static final int CORNERS = Corner.values().length;
    private static final int MOST_SWEEPS = 100;
    /** Change of a mean, in its standard deviations, below which the sweeps end. */
    private static final double SETTLED = 1e-6;

    private WearingRates() {}

    /** Whether the condition changes nothing worth saying. */
    static boolean surelyHold(GaussianPosterior posterior, int tyres) {
        for (int rate = tyres; rate < tyres + CORNERS; rate++) {
            double above = posterior.mean(rate) - LEAST_MM_PER_1000_KM;
            if (!(above > 0 && above * above > SURELY_ABOVE * SURELY_ABOVE * posterior.covariance(rate, rate))) {
                return false;
            }
        }
        return true;
    }

    /**
     * The Gaussian next to the posterior under the condition.
     *
     * @param precision of the posterior, row-major
     * @param right precision times mean
     */
    static GaussianPosterior condition(double[] precision, double[] right, int tyres) {
        int size = tyres + CORNERS;
        var matrix = precision.clone();
        var vector = right.clone();
        var ownPrecision = new double[CORNERS];
        var ownWeight = new double[CORNERS];
        var posterior = new PosteriorPrecision(matrix, size).solve(vector);
        double change = Double.POSITIVE_INFINITY;
        for (int sweep = 0; sweep < MOST_SWEEPS && change > SETTLED; sweep++) {
            change = 0;
            for (int corner = 0; corner < CORNERS; corner++) {
                int rate = tyres + corner;
                double variance = posterior.covariance(rate, rate);
                double mean = posterior.mean(rate);
                double restPrecision = 1 / variance - ownPrecision[corner];
                if (!(restPrecision > 0)) {
                    continue;
                }
                double restWeight = mean / variance - ownWeight[corner];
                var asked = TruncatedNormal.above(
                        new Estimate(restWeight / restPrecision, 1 / Math.sqrt(restPrecision)), LEAST_MM_PER_1000_KM);
                double askedPrecision = 1 / (asked.sd() * asked.sd());
                double more = Math.max(0, askedPrecision - restPrecision) - ownPrecision[corner];
                double moreWeight = askedPrecision * asked.mean() - restWeight - ownWeight[corner];
                ownPrecision[corner] += more;
                ownWeight[corner] += moreWeight;
                matrix[rate * size + rate] += more;
                vector[rate] += moreWeight;
                posterior = new PosteriorPrecision(matrix, size).solve(vector);
                change = Math.max(change, Math.abs(asked.mean() - mean) / asked.sd());
            }
        }
        return posterior;
    }
}
