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

    DepthsAhead(WearPosterior posterior, List<Placement> placements) {
        size = placements.size() * GROOVES;
        scales = new TreadScale[size];
        meanDepth = new double[size];
        meanRate = new double[size];
        depthDepth = new double[size * size];
        depthRate = new double[size * size];
        rateRate = new double[size * size];
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

    /** Least margin of a groove over its standard deviation after k thousand km. */
    double weakest(double k, double[] limits) {
        double weakest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            double marginMm = meanDepth[i] - k * meanRate[i] - limits[i];
            weakest = Math.min(weakest, marginMm / Math.sqrt(covarianceAt(i, i, k)));
        }
        return weakest;
    }

    /** Probability that every groove is at or above its limit after k thousand km. */
    double probabilityAbove(double k, double[] limits) {
        var margins = margins(k, limits);
        return JointProbability.allAbove(margins.means(), margins.covariances());
    }

    /** The same, many times faster and to about 0.05. */
    double roughlyAbove(double k, double[] limits) {
        var margins = margins(k, limits);
        return JointProbability.roughlyAllAbove(margins.means(), margins.covariances());
    }

    /** How far the grooves that may fail lie above their limits. */
    private GaussianPosterior margins(double k, double[] limits) {
        var at = new int[size];
        int together = 0;
        for (int i = 0; i < size; i++) {
            double margin = meanDepth[i] - k * meanRate[i] - limits[i];
            if (!(margin > 0 && margin * margin > CERTAIN * CERTAIN * covarianceAt(i, i, k))) {
                at[together++] = i;
            }
        }
        var mean = new double[together];
        var covariance = new double[together * together];
        for (int a = 0; a < together; a++) {
            mean[a] = meanDepth[at[a]] - k * meanRate[at[a]] - limits[at[a]];
            for (int b = 0; b <= a; b++) {
                covariance[a * together + b] = covarianceAt(at[a], at[b], k);
                covariance[b * together + a] = covariance[a * together + b];
            }
        }
        return new GaussianPosterior(mean, covariance);
    }

    private double covarianceAt(int i, int j, double k) {
        return depthDepth[i * size + j]
                - k * depthRate[i * size + j]
                + k * k * rateRate[i * size + j]
                + seasonVariance * k * Math.min(k, SEASON_THOUSAND_KM);
    }
}
