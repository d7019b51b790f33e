package cornerbook.core.tread;

import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.CholeskyFactor;
import java.util.List;

/**
 * The corner-rate model of tread wear: on the scale of effective depth ({@link TreadScale}) a reading of groove g of tyre t
 * at visit v is
 *
 * <pre>  y = d_tg − Σ_legs a (r_cg + f_s) + o_v + e,                                                     (1)</pre>
 *
 * a the thousand km of a season s at a corner c, with e ~ N(0, σ²) the reading's own error, o_v ~ N(0, τ²) what the gauge
 * and the hand of a visit share, d_tg about the stated depth with half of its variance s_d² shared by the tyre's grooves,
 * r_cg as {@link RatePrior} has it and f_s ~ N(0, φ²); a rate is another while somebody else drives ({@link Drivers}). All is Gaussian, so the posterior is exact; with n_v readings at a
 * visit and h_v the sum of their weights x, z_v of their y,
 *
 * <pre>
 *   A = P0 + (Σ xxᵀ − Σ_v k_v h_v h_vᵀ)/σ²,   k_v = τ²/(σ² + n_v τ²)
 *   A · mean = P0 µ0 + (Σ xy − Σ_v k_v h_v z_v)/σ²,   covariance = A⁻¹                                  (2)
 * </pre>
 *
 * Treads wear and do not grow: where the posterior of a rate reaches below what a tread can wear, it is conditioned on
 * that, see {@link WearingRates}. Derivation and checks: docs/methods/wear.md. Accurate to about 1e-11 relative.
 */
public final class WearModel {
    private final WearParameters parameters;
    private final RatePrior rates;
    private final double noise;
    private final double offset;
    private final double slowing;

    public WearModel(WearParameters parameters) {
        this.parameters = parameters;
        rates = new RatePrior(parameters);
        noise = square(parameters.readingSdMm());
        offset = square(parameters.of(WearParameter.VISIT_SD));
        slowing = parameters.of(WearParameter.SLOWING);
    }

    /**
     * The posterior of all depths and rates; the mean of every rate is above 0.
     *
     * @param newDepths depth when new to the book, by tyre number
     * @param readings in any order; a groove without a reading is known from the others
     * @throws IllegalArgumentException when a reading names a tyre that is not there
     */
    public WearPosterior fit(List<NewDepth> newDepths, List<TreadReading> readings) {
        return fit(newDepths, readings, Drivers.ONE);
    }

    /** The same where others drove before; the rates are those of who drives now. */
    public WearPosterior fit(List<NewDepth> newDepths, List<TreadReading> readings, Drivers drivers) {
        var design = new SetDesign(newDepths, readings, drivers, parameters);
        return posterior(design, gaussian(design));
    }

    /**
     * The same where each reading counts for what it is worth ({@link DoubtfulReadings}): for parameters that were learned. How
     * far a gauge scatters that nobody knows yet, a reading that is far off is the first to tell.
     */
    public WearPosterior fitDoubting(List<NewDepth> newDepths, List<TreadReading> readings, Drivers drivers) {
        var weighed = new DoubtfulReadings(this, newDepths, readings, drivers);
        return posterior(weighed.design(), weighed.posterior());
    }

    private WearPosterior posterior(SetDesign design, GaussianPosterior gaussian) {
        var car = new CarFactor(rates(design), design.firstRate());
        return new WearPosterior(
                design, parameters, car, gaussian, WearingRates.hold(car.logNormal(gaussian), design.firstRate()));
    }

    /** Equation (2): the posterior while the car's factor is taken as Gaussian. */
    GaussianPosterior gaussian(SetDesign design) {
        var factor = factor(design);
        return new GaussianPosterior(factor.solve(rightHandSide(design)), factor.inverse());
    }

    WearParameters parameters() {
        return parameters;
    }

    RatePrior rates(SetDesign design) {
        return design.drivers().equals(Drivers.ONE) ? rates : new RatePrior(parameters, design.drivers());
    }

    /** k_v of (2). */
    double shared(SetDesign.Occasion occasion) {
        return offset / (noise + occasion.readings() * offset);
    }

    /** A of (2). */
    CholeskyFactor factor(SetDesign design) {
        int unknowns = design.unknowns();
        var precision = new double[unknowns * unknowns];
        for (int i = 0; i < precision.length; i++) {
            precision[i] = design.gram(i) / noise;
        }
        for (var occasion : design.occasions()) {
            var weights = occasion.weights();
            double share = shared(occasion) / noise;
            for (int i = 0; i < unknowns; i++) {
                for (int j = 0; j <= i; j++) {
                    precision[i * unknowns + j] -= share * weights[i] * weights[j];
                }
            }
        }
        addPrior(design, precision);
        return CholeskyFactor.find(precision, unknowns)
                .orElseThrow(() -> new IllegalArgumentException("the precision is not positive definite"));
    }

    private void addPrior(SetDesign design, double[] precision) {
        int unknowns = design.unknowns();
        for (int tyre = 0; tyre < design.tyres(); tyre++) {
            var start = design.newDepths().get(tyre);
            for (var groove : Spot.values()) {
                for (var other : Spot.values()) {
                    precision[design.depth(groove, tyre) * unknowns + design.depth(other, tyre)] +=
                            start.precision(groove == other, 1, Spot.values().length, parameters);
                }
            }
        }
        var prior = rates(design);
        for (int i = 0; i < prior.size(); i++) {
            for (int j = 0; j < prior.size(); j++) {
                precision[(design.firstRate() + i) * unknowns + design.firstRate() + j] += prior.precision(i, j);
            }
        }
        for (int season = design.firstSeason(); season < unknowns; season++) {
            precision[season * unknowns + season] += 1 / square(parameters.of(WearParameter.SEASON_SD));
        }
    }

    /** A · mean of (2). */
    double[] rightHandSide(SetDesign design) {
        var right = new double[design.unknowns()];
        for (int i = 0; i < right.length; i++) {
            right[i] = design.cross(i, slowing) / noise;
        }
        for (var occasion : design.occasions()) {
            double share = shared(occasion) * occasion.sum(slowing) / noise;
            for (int i = 0; i < right.length; i++) {
                right[i] -= share * occasion.weights()[i];
            }
        }
        var prior = rates(design);
        for (int i = 0; i < prior.size(); i++) {
            right[design.firstRate() + i] += prior.weightedMean(i);
        }
        return right;
    }

    private static double square(double value) {
        return value * value;
    }
}
