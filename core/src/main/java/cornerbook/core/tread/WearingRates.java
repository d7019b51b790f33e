package cornerbook.core.tread;

import cornerbook.core.numeric.HeldAbove;
import java.util.stream.IntStream;

/**
 * The condition that treads wear: no rate is below {@link #LEAST_MM_PER_1000_KM}. Readings that contradict each other, as
 * by a slip of the pen, pull the Gaussian posterior of a rate to nothing and below; conditioned on the floor it stays where
 * a rate can be. The truncated posterior is no longer Gaussian; {@link HeldAbove} finds the Gaussian next to it, in which
 * each rate's mean lies above the floor by its standard deviation or more.
 *
 * <p>Where every rate's mean lies {@link #SURELY_ABOVE} standard deviations above the floor, less than 1 % of the
 * posterior is cut off and its mean would move by less than 2 % of a standard deviation: then it stays as it is.
 */
final class WearingRates {
    /** One millimetre in a million km: less than any tread wears. Common practice, no source. */
    static final double LEAST_MM_PER_1000_KM = 1e-3;

    private static final double SURELY_ABOVE = 2.5;
    private static final int MOST_SWEEPS = 100;

    private WearingRates() {}

    /**
     * The posterior under the condition, or itself where that changes nothing worth saying.
     *
     * @param first place of the first rate
     */
    static GaussianPosterior hold(GaussianPosterior posterior, int first) {
        var rates = IntStream.range(first, first + RatePrior.RATES).toArray();
        if (surelyHold(posterior, rates)) {
            return posterior;
        }
        var means = posterior.means().clone();
        var covariances = posterior.covariances().clone();
        for (int rate : rates) {
            means[rate] -= LEAST_MM_PER_1000_KM;
        }
        new HeldAbove(means, covariances, rates).settle(MOST_SWEEPS);
        for (int rate : rates) {
            means[rate] += LEAST_MM_PER_1000_KM;
        }
        return new GaussianPosterior(means, covariances);
    }

    private static boolean surelyHold(GaussianPosterior posterior, int[] rates) {
        for (int rate : rates) {
            double above = posterior.mean(rate) - LEAST_MM_PER_1000_KM;
            if (!(above > 0 && above * above > SURELY_ABOVE * SURELY_ABOVE * posterior.covariance(rate, rate))) {
                return false;
            }
        }
        return true;
    }
}
