package cornerbook.core.tread;

import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.numeric.JointProbability;
import java.util.Arrays;
import java.util.List;

/**
 * Every groove of the tyres of a set, as they will wear: effective depths D and rates r, jointly Gaussian, so that after k
 * thousand km the depths are D − k r with covariances Cov(D, D) − k (Cov(D, r) + Cov(r, D)) + k² Cov(r, r), and more by
 * what the seasons to come add to all rates, φ² k min(k, {@link #SEASON_THOUSAND_KM}).
 */
final class DepthsAhead {
    /** Beyond this many standard deviations above the limit a groove cannot change P by more than 3e-6. */
    private static final double CERTAIN = 4.5;
    /** What a car runs in one season; common practice, no source. */
    private static final double SEASON_THOUSAND_KM = 7;

    /** Of a variance: what rounding leaves of nothing. */
    private static final double LEAST_SHARE = 1e-6;

    private static final int GROOVES = Spot.values().length;

    private final int size;
    private final TreadScale[] scales;
    private final double[] meanDepth;
    private final double[] meanRate;
    // Covariances of D with D, D with r and r with D, r with r; row-major.
    private final double[] depthDepth;
    private final double[] depthRate;
    private final double[] rateRate;
    private final double seasonVariance;
    private final double[] seasonShare;
    private final double factorMean;
    private final double factorVariance;
    // Covariances of the car's factor with D and with r.
    private final double[] factorDepth;
    private final double[] factorRate;
    // Slopes of D and r in the factor, and what is left of the mean rate where the factor is nothing.
    private final double[] depthOfFactor;
    private final double[] rateOfFactor;
    private final double[] rateApart;

    DepthsAhead(WearPosterior posterior, List<Placement> placements) {
        size = placements.size() * GROOVES;
        scales = new TreadScale[size];
        meanDepth = new double[size];
        meanRate = new double[size];
        depthDepth = new double[size * size];
        depthRate = new double[size * size];
        rateRate = new double[size * size];
        seasonShare = new double[size];
        seasonVariance = Math.pow(posterior.parameters().of(WearParameter.SEASON_SD), 2);
        var gaussian = posterior.gaussian();
        int unknowns = posterior.design().unknowns();
        var weights = new double[size][];
        var rates = new int[size];
        for (int i = 0; i < size; i++) {
            var placement = placements.get(i / GROOVES);
            var groove = Spot.values()[i % GROOVES];
            scales[i] = posterior.scale(placement.tyre());
            weights[i] = posterior.weights(groove, placement.tyre(), placement.run());
            rates[i] = posterior.rateAt(groove, placement.corner());
            meanDepth[i] = posterior.stated(placement.tyre()) + gaussian.mean(weights[i]);
            meanRate[i] = gaussian.mean(rates[i]);
            seasonShare[i] = posterior.design().seasonShare(placement.corner());
        }
        factorMean = posterior.car().mean(gaussian);
        var withFactor = posterior.car().covariances(gaussian);
        factorVariance = posterior.car().variance(withFactor);
        factorDepth = new double[size];
        factorRate = new double[size];
        depthOfFactor = new double[size];
        rateOfFactor = new double[size];
        rateApart = new double[size];
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < unknowns; k++) {
                factorDepth[i] += weights[i][k] * withFactor[k];
            }
            factorRate[i] = withFactor[rates[i]];
            depthOfFactor[i] = factorDepth[i] / factorVariance;
            rateOfFactor[i] = factorRate[i] / factorVariance;
            rateApart[i] = meanRate[i] - factorMean * rateOfFactor[i];
        }
        for (int i = 0; i < size; i++) {
            var withDepth = new double[unknowns];
            for (int k = 0; k < unknowns; k++) {
                if (weights[i][k] != 0) {
                    for (int j = 0; j < unknowns; j++) {
                        withDepth[j] += weights[i][k] * gaussian.covariance(k, j);
                    }
                }
            }
            for (int j = 0; j < size; j++) {
                double sum = posterior.unseen(
                        placements.get(i / GROOVES).run(),
                        placements.get(j / GROOVES).run());
                for (int k = 0; k < unknowns; k++) {
                    sum += withDepth[k] * weights[j][k];
                }
                depthDepth[i * size + j] = sum;
                depthRate[i * size + j] += withDepth[rates[j]];
                depthRate[j * size + i] += withDepth[rates[j]];
                rateRate[i * size + j] = gaussian.covariance(rates[i], rates[j]);
            }
        }
    }

    /** Effective depths of a limit. */
    double[] limits(double limitMm) {
        return Arrays.stream(scales)
                .mapToDouble(scale -> scale.effective(limitMm))
                .toArray();
    }

    /** Depth of one groove of a tyre, mm. */
    Estimate depth(int placement, Spot groove, double k) {
        int i = placement * GROOVES + groove.ordinal();
        return scales[i].depth(new Estimate(meanDepth[i] - k * meanRate[i], Math.sqrt(covarianceAt(i, i, k))));
    }

    /** When the first groove would reach its limit at mean rates, with a margin of two standard deviations; thousand km. */
    double firstAtLimitThousandKm(double[] limits) {
        double thousandKm = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            double slackMm = meanDepth[i] - limits[i] - 2 * Math.sqrt(depthDepth[i * size + i]);
            thousandKm = Math.min(thousandKm, slackMm / (meanRate[i] + 2 * Math.sqrt(rateRate[i * size + i])));
        }
        return thousandKm;
    }

    /** Variance of the logarithm of the car's factor. */
    double logFactorVariance() {
        return Math.log1p(factorVariance / (factorMean * factorMean));
    }

    /** Mean of that logarithm. */
    double logFactorMean() {
        return Math.log(factorMean) - logFactorVariance() / 2;
    }

    /** Probability that every groove is at or above its limit now. */
    double probabilityAboveNow(double[] limits) {
        var mean = new double[size];
        for (int i = 0; i < size; i++) {
            mean[i] = meanDepth[i] - limits[i];
        }
        var margins = margins(mean, (i, j) -> depthDepth[i * size + j]);
        return JointProbability.allAbove(margins.means(), margins.covariances());
    }

    @FunctionalInterface
    private interface Covariance {
        double of(int groove, int other);
    }

    /** How far the grooves that may fail lie above their limits. */
    private static GaussianPosterior margins(double[] mean, Covariance covariance) {
        var at = new int[mean.length];
        int together = 0;
        for (int i = 0; i < mean.length; i++) {
            if (!(mean[i] > 0 && mean[i] * mean[i] > CERTAIN * CERTAIN * covariance.of(i, i))) {
                at[together++] = i;
            }
        }
        var means = new double[together];
        var covariances = new double[together * together];
        for (int a = 0; a < together; a++) {
            means[a] = mean[at[a]];
            covariances[a * together + a] = covariance.of(at[a], at[a]);
            for (int b = 0; b < a; b++) {
                covariances[a * together + b] = covariance.of(at[a], at[b]);
                covariances[b * together + a] = covariances[a * together + b];
            }
        }
        return new GaussianPosterior(means, covariances);
    }

    /**
     * The grooves after some distance, given its product with the car's factor: with F the factor and δ its logarithm's
     * deviation, K = W/F, a groove's margin is
     *
     * <pre>  D + c (F − E F)/V − K α − W γ − limit,   γ = Cov(F, r)/V,   α = r − γ E F,   c = Cov(F, D)         (1)</pre>
     *
     * straight in δ: its mean at the means of F and K, its slope cF/V + Kα.
     */
    final class After {
        private final double k;
        private final double[] mean = new double[size];
        private final double[] withFactor = new double[size];
        /** Slope of the margin in δ. */
        private final double[] along = new double[size];

        private final double logVariance;

        /**
         * Equation (1).
         *
         * @param k median distance, thousand km
         * @param factor the car's median factor
         * @param logVariance of the factor's logarithm while the product of both stays the same
         */
        After(double k, double factor, double logVariance, double[] limits) {
            this.k = k * Math.exp(logVariance / 2);
            this.logVariance = logVariance;
            double meanFactor = factor * Math.exp(logVariance / 2);
            for (int i = 0; i < size; i++) {
                withFactor[i] = factorDepth[i] - this.k * factorRate[i];
                mean[i] = meanDepth[i]
                        + (meanFactor - factorMean) * depthOfFactor[i]
                        - k * factor * rateOfFactor[i]
                        - this.k * rateApart[i]
                        - limits[i];
                along[i] = meanFactor * depthOfFactor[i] + this.k * rateApart[i];
            }
        }

        private double covariance(int i, int j) {
            return covarianceAt(i, j, k)
                    - withFactor[i] * withFactor[j] / factorVariance
                    + logVariance * along[i] * along[j];
        }

        private double variance(int i) {
            return Math.max(LEAST_SHARE * depthDepth[i * size + i], covariance(i, i));
        }

        /** Whether a groove's margin is below so many of its standard deviations. */
        boolean anyBelow(double deviations) {
            for (int i = 0; i < size; i++) {
                if (mean[i] < deviations * Math.sqrt(variance(i))) {
                    return true;
                }
            }
            return false;
        }

        /** Probability that every groove is at or above its limit. */
        double allAbove() {
            var margins = margins();
            return JointProbability.allAbove(margins.means(), margins.covariances());
        }

        /** The same, many times faster and to about 0.05. */
        double roughlyAllAbove() {
            var margins = margins();
            return JointProbability.roughlyAllAbove(margins.means(), margins.covariances());
        }

        private GaussianPosterior margins() {
            return DepthsAhead.margins(mean, (i, j) -> i == j ? variance(i) : covariance(i, j));
        }
    }

    private double covarianceAt(int i, int j, double k) {
        return depthDepth[i * size + j]
                - k * depthRate[i * size + j]
                + k * k * rateRate[i * size + j]
                + seasonVariance * seasonShare[i] * seasonShare[j] * k * Math.min(k, SEASON_THOUSAND_KM);
    }
}
