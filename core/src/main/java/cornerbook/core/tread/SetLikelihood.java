package cornerbook.core.tread;

import cornerbook.core.corner.Spot;

/**
 * How likely one wheel set's readings are under wear parameters, with depths, rates, seasons and offsets integrated out,
 * and the slope of that in each parameter on its scale. With A, h_v, z_v and k_v as in {@link WearModel}, b = A · mean, n
 * readings and R the covariance of their errors,
 *
 * <pre>
 *   log p = −½ (n log 2π + log|R| − log|P0| + log|A| + yᵀR⁻¹y + µ0ᵀ P0 µ0 − bᵀA⁻¹b) + Σ log ψ'(y)          (1)
 *   log|R| = n log σ² + Σ_v log(1 + n_v τ²/σ²),   yᵀR⁻¹y = (yᵀy − Σ_v k_v z_v²)/σ²
 *   ∂ log p / ∂θ = E[∂ log p(y, unknowns) / ∂θ | y]                                                         (2)
 * </pre>
 *
 * (2) is Fisher's identity (Louis 1982, J. R. Statist. Soc. B 44:226), which needs only the posterior's mean and
 * covariance. The readings enter through the sums of {@link SetDesign}, which are formed once.
 */
final class SetLikelihood {
    private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

    private final SetDesign design;

    SetLikelihood(WearHistory history, WearParameters proportions) {
        design = new SetDesign(history.newDepths(), history.readings(), proportions);
    }

    /** Equation (1); adds (2) to {@code slope}, by {@link WearParameter}. */
    double log(WearModel model, double[] slope) {
        var parameters = model.parameters();
        double noise = parameters.readingSdMm() * parameters.readingSdMm();
        double offset = parameters.of(WearParameter.VISIT_SD) * parameters.of(WearParameter.VISIT_SD);
        double slowing = parameters.of(WearParameter.SLOWING);
        var right = model.rightHandSide(design);
        var factor = model.factor(design);
        var posterior = new GaussianPosterior(factor.solve(right), factor.inverse());
        double twice = -design.readings() * (LOG_TWO_PI + Math.log(noise))
                + logPriorPrecision(model, parameters)
                - factor.logDeterminant()
                - design.square(slowing) / noise
                - model.rates().squaredMean();
        for (var occasion : design.occasions()) {
            double sum = occasion.sum(slowing);
            twice += model.shared(occasion) * sum * sum / noise - Math.log1p(occasion.readings() * offset / noise);
        }
        for (int i = 0; i < right.length; i++) {
            twice += right[i] * posterior.mean(i);
        }
        double log = twice / 2;
        for (double bendSlope : design.bendSlopes()) {
            log += Math.log1p(slowing * bendSlope);
            slope[WearParameter.SLOWING.ordinal()] += bendSlope / (1 + slowing * bendSlope);
        }
        addErrorSlopes(model, posterior, parameters, slope);
        addDepthSlope(posterior, parameters, slope);
        model.rates().addSlope(posterior, design.firstRate(), slope);
        double seasonSd = parameters.of(WearParameter.SEASON_SD);
        for (int season = design.firstSeason(); season < design.unknowns(); season++) {
            slope[WearParameter.SEASON_SD.ordinal()] += moment(posterior, season, season) / (seasonSd * seasonSd) - 1;
        }
        return log;
    }

    private double logPriorPrecision(WearModel model, WearParameters parameters) {
        double log = model.rates().logDeterminant()
                - 2 * design.seasons() * Math.log(parameters.of(WearParameter.SEASON_SD));
        for (var start : design.newDepths()) {
            log += start.logDeterminant(parameters);
        }
        return log;
    }

    /** Of σ and τ by the expected squares of the errors and of their sums over a visit; of the slowing by their means. */
    private void addErrorSlopes(
            WearModel model, GaussianPosterior posterior, WearParameters parameters, double[] slope) {
        double noise = parameters.readingSdMm() * parameters.readingSdMm();
        double offset = parameters.of(WearParameter.VISIT_SD) * parameters.of(WearParameter.VISIT_SD);
        double slowing = parameters.of(WearParameter.SLOWING);
        int unknowns = design.unknowns();
        double squares = design.square(slowing);
        double bent = design.bendProduct(slowing);
        for (int i = 0; i < unknowns; i++) {
            double product = 0;
            for (int j = 0; j < unknowns; j++) {
                product += design.gram(i * unknowns + j) * moment(posterior, i, j);
            }
            squares += product - 2 * posterior.mean(i) * design.cross(i, slowing);
            bent -= posterior.mean(i) * design.bendCross(i);
        }
        double ofNoise = squares / noise - design.readings();
        double ofOffset = 0;
        for (var occasion : design.occasions()) {
            int readings = occasion.readings();
            double share = model.shared(occasion);
            double mean = occasion.sum(slowing) - posterior.mean(occasion.weights());
            double square = mean * mean + posterior.covariance(occasion.weights(), occasion.weights());
            double alone = 1 / (noise + readings * offset);
            ofNoise += share * (readings - (2 - readings * share) * square / noise);
            ofOffset += offset * alone * (alone * square - readings);
            bent -= share * mean * occasion.bend();
        }
        slope[WearParameter.READING_SD.ordinal()] += ofNoise;
        slope[WearParameter.VISIT_SD.ordinal()] += ofOffset;
        slope[WearParameter.SLOWING.ordinal()] -= bent / noise;
    }

    private void addDepthSlope(GaussianPosterior posterior, WearParameters parameters, double[] slope) {
        var grooves = Spot.values();
        for (int tyre = 0; tyre < design.tyres(); tyre++) {
            var start = design.newDepths().get(tyre);
            if (!start.known()) {
                continue;
            }
            double square = -grooves.length;
            for (var groove : grooves) {
                for (var other : grooves) {
                    square += start.precision(groove == other, parameters)
                            * moment(posterior, design.depth(groove, tyre), design.depth(other, tyre));
                }
            }
            slope[WearParameter.NEW_DEPTH_SD.ordinal()] += square;
        }
    }

    private static double moment(GaussianPosterior posterior, int one, int other) {
        return posterior.mean(one) * posterior.mean(other) + posterior.covariance(one, other);
    }
}
