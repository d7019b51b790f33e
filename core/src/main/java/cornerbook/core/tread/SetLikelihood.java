package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * How likely one wheel set's readings are under wear parameters, with depths and rates integrated out, and the slope of
 * that in the logarithm of each parameter. With δ = d − d_new, A and h as in {@link WearModel}, n readings:
 *
 * <pre>
 *   log p(y) = −n/2 log 2πσ² + ½ log|P0| − ½ log|A| − ½ (yᵀy/σ² + µ0ᵀ P0 µ0 − hᵀ A⁻¹ h)       (1)
 *   ∂ log p(y) / ∂θ = E[∂ log p(y, δ, r) / ∂θ | y]                                             (2)
 * </pre>
 *
 * (2) is Fisher's identity (Louis 1982, J. R. Statist. Soc. B 44:226), which needs only the posterior's mean and
 * covariance. The readings enter through XᵀX, Xᵀy and yᵀy, which are formed once. Grooves count as independent.
 */
final class SetLikelihood {
    /** Places of the parameters in the slope. */
    static final int READING_SD = 0;

    static final int NEW_DEPTH_SD = 1;
    static final int FRONT_RATE = 2;
    static final int REAR_RATE = 3;
    static final int VEHICLE_SPREAD = 4;
    static final int CORNER_SPREAD = 5;
    static final int PARAMETERS = 6;

    private static final int CORNERS = Corner.values().length;
    private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

    private final int readings;
    private final List<NewDepth> newDepths;
    private final List<Design> designs = new ArrayList<>();

    /** Grooves that were read together: one XᵀX, and Xᵀy and yᵀy of each groove. */
    private static final class Design {
        private final List<TreadReading> rows;
        private final double[] gram;
        private final List<double[]> crosses = new ArrayList<>();
        private final List<Double> squares = new ArrayList<>();

        Design(List<TreadReading> rows, double[] gram) {
            this.rows = rows;
            this.gram = gram;
        }
    }

    SetLikelihood(WearHistory history) {
        newDepths = history.newDepths();
        readings = history.readings().size();
        for (var spot : Spot.values()) {
            var rows = history.readings().stream()
                    .filter(reading -> reading.groove() == spot)
                    .toList();
            if (!rows.isEmpty()) {
                add(rows);
            }
        }
    }

    int readings() {
        return readings;
    }

    private void add(List<TreadReading> rows) {
        var design = designs.stream()
                .filter(known -> WearModel.sameDesign(known.rows, rows))
                .findFirst()
                .orElseGet(() -> {
                    var fresh = new Design(rows, gram(rows));
                    designs.add(fresh);
                    return fresh;
                });
        int size = size();
        var cross = new double[size];
        double square = 0;
        var x = new double[size];
        for (var row : rows) {
            double y = row.depthMm() - newDepths.get(row.tyre()).depthMm();
            unknowns(row, x);
            for (int i = 0; i < size; i++) {
                cross[i] += x[i] * y;
            }
            square += y * y;
        }
        design.crosses.add(cross);
        design.squares.add(square);
    }

    private double[] gram(List<TreadReading> rows) {
        int size = size();
        var gram = new double[size * size];
        var x = new double[size];
        for (var row : rows) {
            unknowns(row, x);
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    gram[i * size + j] += x[i] * x[j];
                }
            }
        }
        return gram;
    }

    private int size() {
        return newDepths.size() + CORNERS;
    }

    private void unknowns(TreadReading row, double[] x) {
        int tyres = newDepths.size();
        for (int t = 0; t < tyres; t++) {
            x[t] = t == row.tyre() ? 1 : 0;
        }
        for (var corner : Corner.values()) {
            x[tyres + corner.ordinal()] = -row.run().at(corner);
        }
    }

    /** Equation (1); adds (2) to {@code slope}. */
    double log(WearParameters parameters, double[] slope) {
        var prior = new RatePrior(parameters);
        double log = 0;
        for (var design : designs) {
            log += log(design, parameters, prior, slope);
        }
        return log;
    }

    private double log(Design design, WearParameters parameters, RatePrior prior, double[] slope) {
        int tyres = newDepths.size();
        int size = size();
        int rows = design.rows.size();
        double noise = parameters.readingSdMm() * parameters.readingSdMm();
        var precision = new double[size * size];
        double logPriorPrecision = prior.logDeterminant();
        for (int i = 0; i < size * size; i++) {
            precision[i] = design.gram[i] / noise;
        }
        for (int t = 0; t < tyres; t++) {
            double sdMm = newDepths.get(t).sdMm(parameters);
            precision[t * size + t] += 1 / (sdMm * sdMm);
            logPriorPrecision -= 2 * Math.log(sdMm);
        }
        for (int c = 0; c < CORNERS; c++) {
            for (int k = 0; k < CORNERS; k++) {
                precision[(tyres + c) * size + tyres + k] += prior.precision(c, k);
            }
        }
        var factored = new PosteriorPrecision(precision, size);
        double common =
                -0.5 * rows * (LOG_TWO_PI + Math.log(noise)) + 0.5 * (logPriorPrecision - factored.logDeterminant());
        double log = 0;
        for (int g = 0; g < design.crosses.size(); g++) {
            var cross = design.crosses.get(g);
            var right = new double[size];
            for (int i = 0; i < size; i++) {
                right[i] = cross[i] / noise;
            }
            for (int c = 0; c < CORNERS; c++) {
                right[tyres + c] += prior.weightedMean(c);
            }
            var posterior = factored.solve(right);
            double fitted = 0;
            for (int i = 0; i < size; i++) {
                fitted += right[i] * posterior.mean(i);
            }
            log += common - 0.5 * (design.squares.get(g) / noise + prior.squaredMean() - fitted);
            addSlope(design, g, posterior, parameters, prior, slope);
        }
        return log;
    }

    private void addSlope(
            Design design,
            int groove,
            GaussianPosterior posterior,
            WearParameters parameters,
            RatePrior prior,
            double[] slope) {
        int tyres = newDepths.size();
        int size = size();
        double residual = design.squares.get(groove);
        for (int i = 0; i < size; i++) {
            double product = 0;
            for (int j = 0; j < size; j++) {
                double moment = posterior.mean(i) * posterior.mean(j) + posterior.covariance(i, j);
                product += design.gram[i * size + j] * moment;
            }
            residual += product - 2 * posterior.mean(i) * design.crosses.get(groove)[i];
        }
        double noise = parameters.readingSdMm() * parameters.readingSdMm();
        slope[READING_SD] += residual / noise - design.rows.size();
        for (int t = 0; t < tyres; t++) {
            if (newDepths.get(t).known()) {
                double sdMm = parameters.newDepthSdMm();
                double square = posterior.mean(t) * posterior.mean(t) + posterior.covariance(t, t);
                slope[NEW_DEPTH_SD] += square / (sdMm * sdMm) - 1;
            }
        }
        prior.addSlope(posterior, tyres, slope);
    }
}
