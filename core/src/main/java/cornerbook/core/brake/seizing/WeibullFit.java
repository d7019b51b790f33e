package cornerbook.core.brake.seizing;

import cornerbook.core.numeric.Estimate;
import java.util.List;

/**
 * A fitted Weibull regression: log T = β₀ + Σ βⱼxⱼ + σ W.
 *
 * @param coefficients β₀, β₁, …
 * @param scale σ; its reciprocal is the shape of the Weibull distribution
 * @param covariance of the coefficients and log σ, row by row, from the curvature at the maximum
 * @param logLikelihood without the priors
 */
public record WeibullFit(List<Double> coefficients, double scale, List<Double> covariance, double logLikelihood) {
    private static final double TWO_SIDED_95 = 1.959963984540054;

    public WeibullFit {
        coefficients = List.copyOf(coefficients);
        covariance = List.copyOf(covariance);
    }

    /** Standard error of coefficient j. */
    public double standardError(int coefficient) {
        return Math.sqrt(covariance(coefficient, coefficient));
    }

    /** Standard error of log σ. */
    public double standardErrorOfLogScale() {
        return standardError(coefficients.size());
    }

    /** Logarithm of the characteristic life, by which it has happened with probability 1 − 1/e. */
    public double location(List<Double> covariates) {
        double location = coefficients.getFirst();
        for (int j = 1; j < coefficients.size(); j++) {
            location += coefficients.get(j) * covariates.get(j - 1);
        }
        return location;
    }

    /** Cumulative hazard (t/e^location)^(1/σ); survival is e to the minus that. */
    public double cumulativeHazard(double time, List<Double> covariates) {
        return Math.pow(time / Math.exp(location(covariates)), 1 / scale);
    }

    /**
     * The chance that it happens by {@code by}, given that it has not by {@code after}, with 95 % limits by the delta method
     * on the logarithm of the hazard between the two. Source: Meeker and Escobar 1998, section 8.4.3, for the method.
     *
     * @param after at least 0, below {@code by}
     */
    public Chance chance(double after, double by, List<Double> covariates) {
        if (!(after >= 0 && by > after && by < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "chance between %s and %s, expected 0 <= after < by".formatted(after, by));
        }
        double hazard = cumulativeHazard(by, covariates) - cumulativeHazard(after, covariates);
        double factor = Math.exp(TWO_SIDED_95 * sd(slope(after, by, covariates)));
        return new Chance(-Math.expm1(-hazard), -Math.expm1(-hazard / factor), -Math.expm1(-hazard * factor));
    }

    /**
     * How much of the logarithm of the hazard until {@code by} comes from the times, 0 to 1, the rest from what was believed
     * before them: {@link Estimate#shareOfData} by the delta method. Were what was believed of it one unit higher, with all
     * parameters as they go along, the maximum would move it by one less this share, to first order.
     *
     * @param before the fit of the same priors to no times
     * @param by above 0
     */
    double shareOfTimes(WeibullFit before, double by, List<Double> covariates) {
        var slope = slope(0, by, covariates);
        return new Estimate(0, sd(slope)).shareOfData(new Estimate(0, before.sd(slope)));
    }

    /** By the coefficients and log σ, of the logarithm of the hazard between two times. */
    double[] slope(double after, double by, List<Double> covariates) {
        double start = cumulativeHazard(after, covariates);
        double end = cumulativeHazard(by, covariates);
        int size = coefficients.size() + 1;
        var slope = new double[size];
        slope[0] = -1 / scale;
        for (int j = 1; j < size - 1; j++) {
            slope[j] = -covariates.get(j - 1) / scale;
        }
        slope[size - 1] = -(weighted(end) - weighted(start)) / (end - start);
        return slope;
    }

    /** Standard deviation of what has these slopes. */
    private double sd(double[] slope) {
        double variance = 0;
        for (int j = 0; j < slope.length; j++) {
            for (int k = 0; k < slope.length; k++) {
                variance += slope[j] * covariance(j, k) * slope[k];
            }
        }
        return Math.sqrt(variance);
    }

    /**
     * How long after {@code after} the chance stays at or below {@code risk}, given that it has not happened by then.
     *
     * @param risk above 0 and below 1
     */
    public double timeUntil(double risk, double after, List<Double> covariates) {
        if (!(risk > 0 && risk < 1 && after >= 0 && after < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "risk is %s after %s, expected above 0 and below 1 after 0 or more".formatted(risk, after));
        }
        double hazard = cumulativeHazard(after, covariates) - Math.log1p(-risk);
        return Math.exp(location(covariates)) * Math.pow(hazard, scale) - after;
    }

    private double covariance(int row, int column) {
        return covariance.get(row * (coefficients.size() + 1) + column);
    }

    /** u log u: minus the derivative of u in log σ. */
    private static double weighted(double u) {
        return u == 0 ? 0 : u * Math.log(u);
    }
}
