package cornerbook.core.wear;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a set will wear from now on, each tyre at its corner: depth after K thousand km is D − K · r, with D and r jointly
 * Gaussian. The probability that every groove of every tyre is at or above a limit after some days is
 *
 * <pre>  P = Σ_k w_k Π_grooves P(D_i − K_k r_i ≥ limit for every tyre i),   K_k the nodes of a Gauss–Hermite rule  (1)</pre>
 *
 * over the distance, which is Gaussian and cut off at 0 km. Grooves are independent given the distance, as the model has
 * it. The tyres of one groove share the car's factor; their joint probability is taken by conditioning on one tyre after
 * the other with the first two moments of the truncated rest (Mendell and Elston 1974), weakest first. Error of P below
 * 0.01 for P ≥ 0.5, as tests against sampling show.
 */
public final class SetOutlook {
    // Abramowitz and Stegun, table 25.10, n = 7: nodes for exp(−x²), here scaled to the standard normal.
    private static final double[] NODES = {
        0, 0.816287882858965 * Math.sqrt(2), 1.673551628767471 * Math.sqrt(2), 2.651961356835233 * Math.sqrt(2)
    };
    private static final double[] WEIGHTS = {
        0.810264617556807 / Math.sqrt(Math.PI),
        0.425607252610128 / Math.sqrt(Math.PI),
        0.054515582819127 / Math.sqrt(Math.PI),
        9.71781245099519e-4 / Math.sqrt(Math.PI)
    };
    /** Beyond this many standard deviations above the limit a groove cannot change P by more than 1e-9. */
    private static final double CERTAIN = 6;

    private static final double THOUSAND = 1000;
    private static final double TOLERANCE_DAYS = 0.25;

    private final int tyres;
    // Per groove: means of D and r by tyre, and the covariances of D with D, D with r, r with r.
    private final double[][] depth = new double[Spot.values().length][];
    private final double[][] rate = new double[Spot.values().length][];
    private final double[][] depthDepth = new double[Spot.values().length][];
    private final double[][] depthRate = new double[Spot.values().length][];
    private final double[][] rateRate = new double[Spot.values().length][];

    SetOutlook(WearPosterior posterior, List<Placement> placements) {
        tyres = placements.size();
        int unknowns = posterior.tyres() + Corner.values().length;
        var weights = new double[tyres][unknowns];
        for (int i = 0; i < tyres; i++) {
            posterior.weigh(placements.get(i).tyre(), placements.get(i).run(), weights[i]);
        }
        for (var spot : Spot.values()) {
            int g = spot.ordinal();
            var groove = posterior.groove(spot);
            depth[g] = new double[tyres];
            rate[g] = new double[tyres];
            depthDepth[g] = new double[tyres * tyres];
            depthRate[g] = new double[tyres * tyres];
            rateRate[g] = new double[tyres * tyres];
            boolean shared = g > 0
                    && groove.factor() == posterior.groove(Spot.values()[g - 1]).factor();
            if (shared) {
                depthDepth[g] = depthDepth[g - 1];
                depthRate[g] = depthRate[g - 1];
                rateRate[g] = rateRate[g - 1];
            }
            for (int i = 0; i < tyres; i++) {
                int rateI = posterior.tyres() + placements.get(i).corner().ordinal();
                depth[g][i] = posterior.mean(groove, weights[i]);
                rate[g][i] = groove.mean(rateI);
                if (shared) {
                    continue;
                }
                for (int j = 0; j < tyres; j++) {
                    int rateJ = posterior.tyres() + placements.get(j).corner().ordinal();
                    depthDepth[g][i * tyres + j] = posterior.covariance(groove, weights[i], weights[j]);
                    rateRate[g][i * tyres + j] = groove.covariance(rateI, rateJ);
                    double sum = 0;
                    for (int k = 0; k < unknowns; k++) {
                        sum += weights[i][k] * groove.covariance(k, rateJ);
                    }
                    depthRate[g][i * tyres + j] = sum;
                }
            }
        }
    }

    /** Depth in one groove of the tyre at a place in the list after some km, known distance, mm. */
    public Estimate depth(Spot groove, int placement, double distanceKm) {
        int g = groove.ordinal();
        int at = placement * tyres + placement;
        double k = distanceKm / THOUSAND;
        double variance = depthDepth[g][at] - 2 * k * depthRate[g][at] + k * k * rateRate[g][at];
        return new Estimate(depth[g][placement] - k * rate[g][placement], Math.sqrt(variance));
    }

    /**
     * Equation (1).
     *
     * @param days from now, 0 or more
     * @param limitMm depth that every groove has to keep
     */
    public double probabilityHolds(double days, DistancePerDay distance, double limitMm) {
        double meanThousandKm = distance.meanKm() * days / THOUSAND;
        double sdThousandKm = distance.sdKm() * days / THOUSAND;
        double probability = WEIGHTS[0] * probabilityAt(meanThousandKm, limitMm);
        for (int k = 1; k < NODES.length; k++) {
            double offset = NODES[k] * sdThousandKm;
            probability += WEIGHTS[k]
                    * (probabilityAt(meanThousandKm + offset, limitMm)
                            + probabilityAt(Math.max(0, meanThousandKm - offset), limitMm));
        }
        return Math.clamp(probability, 0, 1);
    }

    /**
     * Days until the probability falls through the confidence, to a quarter of a day; 0 when it is below it now, empty
     * when it still stands at {@code mostDays}.
     */
    public OptionalDouble horizonDays(DistancePerDay distance, double limitMm, double confidence, double mostDays) {
        double low = 0;
        double atLow = logOdds(probabilityHolds(0, distance, limitMm)) - logOdds(confidence);
        if (atLow < 0) {
            return OptionalDouble.of(0);
        }
        double high = mostDays;
        double atHigh = logOdds(probabilityHolds(high, distance, limitMm)) - logOdds(confidence);
        if (atHigh >= 0) {
            return OptionalDouble.empty();
        }
        // Regula falsi with the Illinois rule on the log odds, which are nearly straight in days; bisection where it
        // crawls.
        double middle = Math.clamp(firstGuessDays(distance, limitMm), low, high);
        int sideKept = 0;
        for (int step = 1; high - low > TOLERANCE_DAYS; step++) {
            double atMiddle = logOdds(probabilityHolds(middle, distance, limitMm)) - logOdds(confidence);
            if (atMiddle >= 0) {
                low = middle;
                atLow = atMiddle;
                atHigh = sideKept > 0 ? atHigh / 2 : atHigh;
                sideKept = 1;
            } else {
                high = middle;
                atHigh = atMiddle;
                atLow = sideKept < 0 ? atLow / 2 : atLow;
                sideKept = -1;
            }
            double nudgeDays = 0.4 * TOLERANCE_DAYS;
            middle = step % 5 == 0
                    ? (low + high) / 2
                    : Math.clamp(
                            low + (high - low) * atLow / (atLow - atHigh),
                            low + nudgeDays,
                            Math.max(low + nudgeDays, high - nudgeDays));
        }
        return OptionalDouble.of(low);
    }

    /** When the first groove would reach the limit at mean rates with a margin of about one standard deviation. */
    private double firstGuessDays(DistancePerDay distance, double limitMm) {
        double thousandKm = Double.POSITIVE_INFINITY;
        for (int g = 0; g < depth.length; g++) {
            for (int i = 0; i < tyres; i++) {
                double slack = depth[g][i] - limitMm - Math.sqrt(depthDepth[g][i * tyres + i]);
                double rateHigh = rate[g][i] + Math.sqrt(rateRate[g][i * tyres + i]);
                thousandKm = Math.min(thousandKm, slack / rateHigh);
            }
        }
        return thousandKm * THOUSAND / Math.max(1, distance.meanKm() + distance.sdKm());
    }

    private static double logOdds(double probability) {
        double p = Math.clamp(probability, 1e-12, 1 - 1e-12);
        return Math.log(p / (1 - p));
    }

    private double probabilityAt(double thousandKm, double limitMm) {
        double probability = 1;
        for (int g = 0; g < depth.length && probability > 0; g++) {
            probability *= grooveProbability(g, thousandKm, limitMm);
        }
        return probability;
    }

    private double grooveProbability(int g, double k, double limitMm) {
        var mean = new double[tyres];
        var covariance = new double[tyres * tyres];
        int uncertain = 0;
        var order = new int[tyres];
        for (int i = 0; i < tyres; i++) {
            mean[i] = depth[g][i] - k * rate[g][i] - limitMm;
            covariance[i * tyres + i] = covarianceAt(g, i, i, k);
            if (mean[i] < CERTAIN * Math.sqrt(covariance[i * tyres + i])) {
                order[uncertain++] = i;
            }
        }
        for (int a = 0; a < uncertain; a++) {
            for (int b = 0; b < a; b++) {
                covariance[order[a] * tyres + order[b]] = covarianceAt(g, order[a], order[b], k);
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

    private double covarianceAt(int g, int i, int j, double k) {
        return depthDepth[g][i * tyres + j]
                - k * (depthRate[g][i * tyres + j] + depthRate[g][j * tyres + i])
                + k * k * rateRate[g][i * tyres + j];
    }
}
