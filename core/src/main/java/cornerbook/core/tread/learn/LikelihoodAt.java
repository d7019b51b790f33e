package cornerbook.core.tread.learn;

import cornerbook.core.corner.Corner;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.util.Arrays;
import java.util.List;

/**
 * How likely readings are under wear parameters, with depths, rates, seasons and offsets integrated out, and the slope of
 * that in each parameter on its scale. For each {@link GroovePart} of a set, in the terms of {@link
 * cornerbook.core.tread.WearModel}, with loads l in place of ones, n values, N_v the sum of l² at a visit, h_v that of lx and
 * z_v that of ly, b = A · mean and R the covariance of the errors,
 *
 * <pre>
 *   log p = −½ (n log 2π + log|R| − log|P0| + log|A| + yᵀR⁻¹y + µ0ᵀ P0 µ0 − bᵀA⁻¹b) + Σ log ψ'(y)          (1)
 *   log|R| = n log σ² + Σ_v log(1 + N_v τ²/σ²),   yᵀR⁻¹y = (yᵀy − Σ_v k_v z_v²)/σ²,   k_v = τ²/(σ² + N_v τ²)
 *   ∂ log p / ∂θ = E[∂ log p(y, unknowns) / ∂θ | y]                                                         (2)
 * </pre>
 *
 * (2) is Fisher's identity (Louis 1982, J. R. Statist. Soc. B 44:226), which needs only the posterior's mean and
 * covariance. Checked against the multivariate normal density of Hipparchus and against R's lme4.
 *
 * <p>It works in arrays of its own, so it serves one thread.
 */
final class LikelihoodAt {
    private static final double LOG_TWO_PI = Math.log(2 * Math.PI);
    /** Factors above 0 and below 1e19 whose product is no overflow. */
    private static final int FACTORS = 16;

    /** The precision of a depth does not go by how deep it is. */
    private static final double ANY_MM = 8;

    private final WearParameters parameters;
    private final PartPrior[] priors = new PartPrior[GroovePart.values().length];
    /** Logarithms of the determinants of the prior precisions of depths, by part and whether a tyre came new. */
    private final double[][] depthDeterminants = new double[GroovePart.values().length][2];
    /** Those precisions, row-major. */
    private final double[][][] depthPrecisions = new double[GroovePart.values().length][2][];

    private final double[] meanRates = new double[PartPrior.CORNERS];
    private final double noise;
    private final double offset;
    private final double slowing;
    private final double season;
    private final double logNoise;
    private final double logSeason;

    private double[] scales = new double[0];
    private double[] weights = new double[0];
    private double[] whitened = new double[0];
    private double[] means = new double[0];
    private double[] lower = new double[0];
    private double[] inverse = new double[0];
    private double[] moments = new double[0];
    private double[] off = new double[0];

    LikelihoodAt(WearParameters parameters) {
        this.parameters = parameters;
        noise = square(parameters.readingSdMm());
        offset = square(parameters.of(WearParameter.VISIT_SD));
        slowing = parameters.of(WearParameter.SLOWING);
        season = square(parameters.of(WearParameter.SEASON_SD));
        logNoise = Math.log(noise);
        logSeason = Math.log(season);
        for (var part : GroovePart.values()) {
            priors[part.ordinal()] = new PartPrior(part, parameters);
            for (var start : List.of(NewDepth.unknown(ANY_MM), NewDepth.stated(ANY_MM))) {
                depthPrecisions[part.ordinal()][known(start)] = depthPrecision(part, start);
                depthDeterminants[part.ordinal()][known(start)] =
                        start.logDeterminant(part.size(), part.square(), parameters);
            }
        }
        for (var corner : Corner.values()) {
            meanRates[corner.ordinal()] = parameters.rate(corner.axle());
        }
    }

    private double[] depthPrecision(GroovePart part, NewDepth start) {
        int size = part.size();
        var precision = new double[size * size];
        for (int value = 0; value < size; value++) {
            for (int other = 0; other < size; other++) {
                precision[value * size + other] =
                        start.precision(value == other, part.load(value) * part.load(other), part.square(), parameters);
            }
        }
        return precision;
    }

    private double[] depthPrecision(PartSums sums, NewDepth start) {
        return depthPrecisions[sums.part().ordinal()][known(start)];
    }

    private static int known(NewDepth start) {
        return start.known() ? 1 : 0;
    }

    /** Equation (1) of a set; adds (2) to {@code slope}, by {@link WearParameter}. */
    double log(SetLikelihood set, double[] slope) {
        double log = 0;
        for (var part : set.parts()) {
            log += log(part, slope);
        }
        var bendSlopes = set.bendSlopes();
        double product = 1;
        double ofSlowing = 0;
        for (int i = 0; i < bendSlopes.length; i++) {
            double stretch = 1 + slowing * bendSlopes[i];
            ofSlowing += bendSlopes[i] / stretch;
            product *= stretch;
            if (i % FACTORS == FACTORS - 1) {
                log += Math.log(product);
                product = 1;
            }
        }
        slope[WearParameter.SLOWING.ordinal()] += ofSlowing;
        return log + Math.log(product);
    }

    private double log(PartSums sums, double[] slope) {
        var prior = priors[sums.part().ordinal()];
        int unknowns = sums.unknowns();
        int copies = sums.copies();
        makeRoom(unknowns, copies);
        scale(sums);
        double logDeterminant = factor(sums, prior);
        invertLower(unknowns);
        double explained = solve(sums, prior);
        addMoments(unknowns, copies);

        double logPrior = prior.logDeterminant() - sums.seasons() * logSeason;
        for (var start : sums.newDepths()) {
            logPrior += depthDeterminants[sums.part().ordinal()][known(start)];
        }
        double twice = -sums.values() * (LOG_TWO_PI + logNoise)
                + copies * (logPrior - logDeterminant)
                - sums.square(slowing) / noise
                - prior.squaredMean()
                + explained;
        double loads = 1;
        for (var occasion : sums.occasions()) {
            double sum = occasion.sum(slowing);
            twice += shared(occasion) * sum * sum / noise;
            loads *= 1 + occasion.loads() * offset / noise;
        }
        addErrorSlopes(sums, slope);
        addDepthSlope(sums, slope);
        addRateSlopes(sums, prior, slope);
        for (int i = sums.firstSeason(); i < unknowns; i++) {
            slope[WearParameter.SEASON_SD.ordinal()] += moments[i * unknowns + i] / season - 1;
        }
        return (twice - Math.log(loads)) / 2;
    }

    private void makeRoom(int unknowns, int copies) {
        if (scales.length < unknowns) {
            scales = new double[unknowns];
            weights = new double[unknowns];
            whitened = new double[unknowns];
            off = new double[unknowns * unknowns];
            lower = new double[unknowns * unknowns];
            inverse = new double[unknowns * unknowns];
            moments = new double[unknowns * unknowns];
        }
        if (means.length < unknowns * copies) {
            means = new double[unknowns * copies];
        }
    }

    /** What one of each unknown is worth in the sums: rates are taken relative to their means. */
    private void scale(PartSums sums) {
        Arrays.fill(scales, 0, sums.firstRate(), 1);
        Arrays.fill(scales, sums.firstSeason(), sums.unknowns(), 1);
        for (int i = sums.firstRate(); i < sums.firstSeason(); i++) {
            scales[i] = meanRates[(i - sums.firstRate()) % PartPrior.CORNERS];
        }
    }

    /** k_v of (1). */
    private double shared(PartSums.Occasion occasion) {
        return offset / (noise + occasion.loads() * offset);
    }

    /** The Cholesky factor of A, to {@link #lower}; the logarithm of its determinant. */
    private double factor(PartSums sums, PartPrior prior) {
        int unknowns = sums.unknowns();
        var gram = sums.gram();
        for (int i = 0; i < unknowns; i++) {
            double scale = scales[i] / noise;
            for (int j = 0; j <= i; j++) {
                lower[i * unknowns + j] = gram[i * unknowns + j] * scale * scales[j];
            }
        }
        for (var occasion : sums.occasions()) {
            scaleWeights(occasion, unknowns);
            double share = shared(occasion) / noise;
            for (int i = 0; i < unknowns; i++) {
                double factor = share * weights[i];
                for (int j = 0; j <= i; j++) {
                    lower[i * unknowns + j] -= factor * weights[j];
                }
            }
        }
        addPrior(sums, prior);
        double log = 0;
        double product = 1;
        for (int i = 0; i < unknowns; i++) {
            int row = i * unknowns;
            for (int j = 0; j < i; j++) {
                double sum = lower[row + j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[row + k] * lower[j * unknowns + k];
                }
                lower[row + j] = sum / lower[j * unknowns + j];
            }
            double diagonal = lower[row + i];
            for (int k = 0; k < i; k++) {
                diagonal -= lower[row + k] * lower[row + k];
            }
            if (!(diagonal > 0 && diagonal < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("the precision is not positive definite");
            }
            lower[row + i] = Math.sqrt(diagonal);
            product *= diagonal;
            if (i % FACTORS == FACTORS - 1) {
                log += Math.log(product);
                product = 1;
            }
        }
        return log + Math.log(product);
    }

    private void scaleWeights(PartSums.Occasion occasion, int unknowns) {
        for (int i = 0; i < unknowns; i++) {
            weights[i] = scales[i] * occasion.weights()[i];
        }
    }

    private void addPrior(PartSums sums, PartPrior prior) {
        int unknowns = sums.unknowns();
        int size = sums.part().size();
        for (int tyre = 0; tyre < sums.tyres(); tyre++) {
            var precision = depthPrecision(sums, sums.newDepths().get(tyre));
            for (int value = 0; value < size; value++) {
                for (int other = 0; other <= value; other++) {
                    lower[(value * sums.tyres() + tyre) * unknowns + other * sums.tyres() + tyre] +=
                            precision[value * size + other];
                }
            }
        }
        int first = sums.firstRate();
        for (int i = 0; i < prior.rates(); i++) {
            for (int j = 0; j <= i; j++) {
                lower[(first + i) * unknowns + first + j] += prior.precision(i, j);
            }
        }
        for (int i = sums.firstSeason(); i < unknowns; i++) {
            lower[i * unknowns + i] += 1 / season;
        }
    }

    /** L⁻¹, to {@link #inverse}, lower triangle. */
    private void invertLower(int unknowns) {
        for (int i = 0; i < unknowns; i++) {
            int row = i * unknowns;
            double diagonal = 1 / lower[row + i];
            for (int j = 0; j < i; j++) {
                inverse[row + j] = 0;
            }
            for (int k = 0; k < i; k++) {
                double factor = lower[row + k];
                for (int j = 0; j <= k; j++) {
                    inverse[row + j] -= factor * inverse[k * unknowns + j];
                }
            }
            for (int j = 0; j < i; j++) {
                inverse[row + j] *= diagonal;
            }
            inverse[row + i] = diagonal;
        }
    }

    /** The posterior's means, to {@link #means}; bᵀA⁻¹b summed over the copies. */
    private double solve(PartSums sums, PartPrior prior) {
        int unknowns = sums.unknowns();
        double explained = 0;
        for (int copy = 0; copy < sums.copies(); copy++) {
            for (int i = 0; i < unknowns; i++) {
                weights[i] = scales[i] * sums.cross(copy, i, slowing) / noise;
            }
            for (var occasion : sums.occasions()) {
                double share = shared(occasion) * occasion.sum(slowing) / noise;
                for (int i = 0; i < unknowns; i++) {
                    weights[i] -= share * scales[i] * occasion.weights()[i];
                }
            }
            for (int i = 0; i < prior.rates(); i++) {
                weights[sums.firstRate() + i] += prior.weightedMean(i);
            }
            explained += whiten(unknowns);
            int first = copy * unknowns;
            Arrays.fill(means, first, first + unknowns, 0);
            for (int k = 0; k < unknowns; k++) {
                for (int i = 0; i <= k; i++) {
                    means[first + i] += inverse[k * unknowns + i] * whitened[k];
                }
            }
        }
        return explained;
    }

    /** L⁻¹ times {@link #weights}, to {@link #whitened}; its square. */
    private double whiten(int unknowns) {
        double square = 0;
        for (int i = 0; i < unknowns; i++) {
            double sum = 0;
            for (int j = 0; j <= i; j++) {
                sum += inverse[i * unknowns + j] * weights[j];
            }
            whitened[i] = sum;
            square += sum * sum;
        }
        return square;
    }

    /** Expected products of the unknowns, summed over the copies, to {@link #moments}, lower triangle. */
    private void addMoments(int unknowns, int copies) {
        Arrays.fill(moments, 0, unknowns * unknowns, 0);
        for (int k = 0; k < unknowns; k++) {
            int row = k * unknowns;
            for (int i = 0; i <= k; i++) {
                double factor = copies * inverse[row + i];
                for (int j = 0; j <= i; j++) {
                    moments[i * unknowns + j] += factor * inverse[row + j];
                }
            }
        }
        for (int copy = 0; copy < copies; copy++) {
            int first = copy * unknowns;
            for (int i = 0; i < unknowns; i++) {
                for (int j = 0; j <= i; j++) {
                    moments[i * unknowns + j] += means[first + i] * means[first + j];
                }
            }
        }
    }

    /** Of σ and τ by the expected squares of the errors and of their sums over a visit; of the slowing by their means. */
    private void addErrorSlopes(PartSums sums, double[] slope) {
        int unknowns = sums.unknowns();
        var gram = sums.gram();
        double squares = sums.square(slowing);
        double bent = sums.bendProduct(slowing);
        for (int i = 0; i < unknowns; i++) {
            int row = i * unknowns;
            double product = 0;
            for (int j = 0; j < i; j++) {
                product += 2 * gram[row + j] * scales[j] * moments[row + j];
            }
            squares += scales[i] * (product + gram[row + i] * scales[i] * moments[row + i]);
            for (int copy = 0; copy < sums.copies(); copy++) {
                double mean = scales[i] * means[copy * unknowns + i];
                squares -= 2 * mean * sums.cross(copy, i, slowing);
                bent -= mean * sums.bendCross(copy, i);
            }
        }
        double ofNoise = squares / noise - sums.values();
        double ofOffset = 0;
        for (var occasion : sums.occasions()) {
            scaleWeights(occasion, unknowns);
            double loads = occasion.loads();
            double share = shared(occasion);
            double mean = occasion.sum(slowing);
            for (int i = 0; i < unknowns; i++) {
                mean -= weights[i] * means[i];
            }
            double square = mean * mean + whiten(unknowns);
            double alone = 1 / (noise + loads * offset);
            ofNoise += share * (loads - (2 - loads * share) * square / noise);
            ofOffset += offset * alone * (alone * square - loads);
            bent -= share * mean * occasion.bend();
        }
        slope[WearParameter.READING_SD.ordinal()] += ofNoise;
        slope[WearParameter.VISIT_SD.ordinal()] += ofOffset;
        slope[WearParameter.SLOWING.ordinal()] -= bent / noise;
    }

    private void addDepthSlope(PartSums sums, double[] slope) {
        int unknowns = sums.unknowns();
        int size = sums.part().size();
        for (int tyre = 0; tyre < sums.tyres(); tyre++) {
            var start = sums.newDepths().get(tyre);
            if (!start.known()) {
                continue;
            }
            var precision = depthPrecision(sums, start);
            double square = -size * sums.copies();
            for (int value = 0; value < size; value++) {
                for (int other = 0; other <= value; other++) {
                    square += (value == other ? 1 : 2)
                            * precision[value * size + other]
                            * moments[(value * sums.tyres() + tyre) * unknowns + other * sums.tyres() + tyre];
                }
            }
            slope[WearParameter.NEW_DEPTH_SD.ordinal()] += square;
        }
    }

    private void addRateSlopes(PartSums sums, PartPrior prior, double[] slope) {
        int unknowns = sums.unknowns();
        int rates = prior.rates();
        int first = sums.firstRate();
        for (int i = 0; i < rates; i++) {
            weights[i] = means[first + i] - prior.mean(i);
            for (int j = 0; j <= i; j++) {
                off[i * rates + j] = moments[(first + i) * unknowns + first + j]
                        - prior.mean(i) * means[first + j]
                        - prior.mean(j) * means[first + i]
                        + prior.mean(i) * prior.mean(j);
            }
        }
        prior.addSlope(sums.copies(), off, weights, slope);
    }

    private static double square(double value) {
        return value * value;
    }
}
