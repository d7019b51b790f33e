package cornerbook.core.tread;

import cornerbook.core.numeric.Estimate;
import cornerbook.core.numeric.JointProbability;
import cornerbook.core.numeric.NormalDistribution;

/**
 * One groove of the tyres of a set, as they will wear: depths D and rates r, jointly Gaussian, so that after k thousand km
 * the depths are D − k r with covariances Cov(D, D) − k (Cov(D, r) + Cov(r, D)) + k² Cov(r, r).
 */
final class GrooveOutlook {
    private static final int MOST_TYRES = 4;
    /** Beyond this many standard deviations above the limit a groove cannot change P by more than 3e-6. */
    private static final double CERTAIN = 4.5;

    /** Beyond this many, what a groove has in common with its neighbours cannot change P by more than 5e-4. */
    private static final double APART = 3.3;

    private final int tyres;
    private final double[] meanDepth;
    private final double[] meanRate;
    // Covariances of D with D, D with r, r with r; row-major.
    private final double[] depthDepth;
    private final double[] depthRate;
    private final double[] rateRate;

    private GrooveOutlook(
            double[] meanDepth, double[] meanRate, double[] depthDepth, double[] depthRate, double[] rateRate) {
        this.tyres = meanDepth.length;
        this.meanDepth = meanDepth;
        this.meanRate = meanRate;
        this.depthDepth = depthDepth;
        this.depthRate = depthRate;
        this.rateRate = rateRate;
    }

    /**
     * From a posterior.
     *
     * @param weights of the unknowns in the depth of each tyre
     * @param rates place of each tyre's rate among the unknowns
     */
    static GrooveOutlook of(WearPosterior posterior, GaussianPosterior groove, double[][] weights, int[] rates) {
        int tyres = weights.length;
        var depthDepth = new double[tyres * tyres];
        var depthRate = new double[tyres * tyres];
        var rateRate = new double[tyres * tyres];
        for (int i = 0; i < tyres; i++) {
            for (int j = 0; j < tyres; j++) {
                depthDepth[i * tyres + j] = posterior.covariance(groove, weights[i], weights[j]);
                rateRate[i * tyres + j] = groove.covariance(rates[i], rates[j]);
                for (int k = 0; k < weights[i].length; k++) {
                    depthRate[i * tyres + j] += weights[i][k] * groove.covariance(k, rates[j]);
                }
            }
        }
        return new GrooveOutlook(new double[tyres], new double[tyres], depthDepth, depthRate, rateRate)
                .withMeansOf(posterior, groove, weights, rates);
    }

    /** Another groove that was read together with this one: the covariances are the same. */
    GrooveOutlook withMeansOf(WearPosterior posterior, GaussianPosterior groove, double[][] weights, int[] rates) {
        var depths = new double[tyres];
        var wear = new double[tyres];
        for (int i = 0; i < tyres; i++) {
            depths[i] = posterior.mean(groove, weights[i]);
            wear[i] = groove.mean(rates[i]);
        }
        return new GrooveOutlook(depths, wear, depthDepth, depthRate, rateRate);
    }

    Estimate depth(int tyre, double k) {
        return new Estimate(meanDepth[tyre] - k * meanRate[tyre], Math.sqrt(covarianceAt(tyre, tyre, k)));
    }

    /** When the first tyre would reach the limit at mean rates, with a margin of two standard deviations; thousand km. */
    double firstAtLimitThousandKm(double limitMm) {
        double thousandKm = Double.POSITIVE_INFINITY;
        for (int i = 0; i < tyres; i++) {
            double slackMm = meanDepth[i] - limitMm - 2 * Math.sqrt(depthDepth[i * tyres + i]);
            thousandKm = Math.min(thousandKm, slackMm / (meanRate[i] + 2 * Math.sqrt(rateRate[i * tyres + i])));
        }
        return thousandKm;
    }

    /** Least margin of a tyre over its standard deviation after k thousand km. */
    double weakest(double k, double limitMm) {
        double weakest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < tyres; i++) {
            double marginMm = meanDepth[i] - k * meanRate[i] - limitMm;
            weakest = Math.min(weakest, marginMm / Math.sqrt(covarianceAt(i, i, k)));
        }
        return weakest;
    }

    /** Probability that every tyre is at or above the limit after k thousand km. */
    double probabilityAbove(double k, double limitMm) {
        var z = new double[MOST_TYRES];
        var sd = new double[MOST_TYRES];
        var at = new int[MOST_TYRES];
        int together = 0;
        double probability = 1;
        for (int i = 0; i < tyres; i++) {
            double variance = covarianceAt(i, i, k);
            double margin = meanDepth[i] - k * meanRate[i] - limitMm;
            if (margin > 0 && margin * margin > CERTAIN * CERTAIN * variance) {
                continue;
            }
            double own = Math.sqrt(variance);
            if (margin > APART * own) {
                probability *= NormalDistribution.cumulative(margin / own);
                continue;
            }
            z[together] = margin / own;
            sd[together] = own;
            at[together++] = i;
        }
        if (together == 0) {
            return probability;
        }
        var correlation = new double[MOST_TYRES * MOST_TYRES];
        for (int a = 1; a < together; a++) {
            for (int b = 0; b < a; b++) {
                correlation[a * MOST_TYRES + b] = covarianceAt(at[a], at[b], k) / (sd[a] * sd[b]);
            }
        }
        return probability * JointProbability.allAbove(z, correlation, together);
    }

    /** The same to about 0.01, some times faster; see {@link SetOutlook#quickly}. */
    double quickProbabilityAbove(double k, double limitMm) {
        var mean = new double[tyres];
        var covariance = new double[tyres * tyres];
        int uncertain = 0;
        var order = new int[tyres];
        for (int i = 0; i < tyres; i++) {
            mean[i] = meanDepth[i] - k * meanRate[i] - limitMm;
            covariance[i * tyres + i] = covarianceAt(i, i, k);
            if (mean[i] < CERTAIN * Math.sqrt(covariance[i * tyres + i])) {
                order[uncertain++] = i;
            }
        }
        for (int a = 0; a < uncertain; a++) {
            for (int b = 0; b < a; b++) {
                covariance[order[a] * tyres + order[b]] = covarianceAt(order[a], order[b], k);
                covariance[order[b] * tyres + order[a]] = covariance[order[a] * tyres + order[b]];
            }
        }
        double probability = 1;
        for (int a = 0; a < uncertain; a++) {
            int weakest = a;
            for (int b = a + 1; b < uncertain; b++) {
                if (standardised(mean, covariance, order[b]) < standardised(mean, covariance, order[weakest])) {
                    weakest = b;
                }
            }
            int i = order[weakest];
            order[weakest] = order[a];
            order[a] = i;
            double z = standardised(mean, covariance, i);
            double holds = NormalDistribution.cumulative(z);
            probability *= holds;
            if (holds < 1e-300) {
                return 0;
            }
            double ratio = NormalDistribution.density(z) / holds;
            double variance = covariance[i * tyres + i];
            double shift = ratio / Math.sqrt(variance);
            double shrink = ratio * (ratio + z) / variance;
            for (int b = a + 1; b < uncertain; b++) {
                int j = order[b];
                double withJ = covariance[i * tyres + j];
                mean[j] += withJ * shift;
                for (int c = a + 1; c < uncertain; c++) {
                    covariance[j * tyres + order[c]] -= withJ * covariance[i * tyres + order[c]] * shrink;
                }
            }
        }
        return probability;
    }

    private double standardised(double[] mean, double[] covariance, int i) {
        return mean[i] / Math.sqrt(covariance[i * tyres + i]);
    }

    private double covarianceAt(int i, int j, double k) {
        return depthDepth[i * tyres + j]
                - k * (depthRate[i * tyres + j] + depthRate[j * tyres + i])
                + k * k * rateRate[i * tyres + j];
    }
}
