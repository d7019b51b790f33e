package cornerbook.core.brake.seizing;

import cornerbook.core.numeric.CholeskyFactor;
import java.util.Arrays;
import java.util.List;

/** The penalised log-likelihood of a sample at one point (β, log σ), with its gradient and the negative of its Hessian. */
final class Objective {
    private final double[] point;
    private final double[] gradient;
    private final double[] negativeHessian;
    private final double[] priorPrecision;
    private double logLikelihood;
    private double logPrior;
    /** Whether every parameter has a proper prior. */
    private boolean held = true;

    Objective(CensoredSample data, List<NormalPrior> coefficientPriors, NormalPrior logScalePrior, double[] point) {
        int size = point.length;
        this.point = point;
        gradient = new double[size];
        negativeHessian = new double[size * size];
        priorPrecision = new double[size * size];
        addData(data);
        for (int j = 0; j < size; j++) {
            var prior = j < size - 1 ? coefficientPriors.get(j) : logScalePrior;
            double away = point[j] - prior.mean();
            double precision = prior.precision();
            held &= precision > 0;
            logPrior -= 0.5 * precision * away * away;
            gradient[j] -= precision * away;
            negativeHessian[j * size + j] += precision;
            priorPrecision[j * size + j] = precision;
        }
    }

    private void addData(CensoredSample data) {
        int size = point.length;
        int columns = size - 1;
        double scale = Math.exp(point[columns]);
        var one = new CensoredLikelihood();
        for (int i = 0; i < data.size(); i++) {
            double location = 0;
            for (int j = 0; j < columns; j++) {
                location += data.design(i, j) * point[j];
            }
            one.set(data.logAfter(i), data.logBy(i), location, scale);
            logLikelihood += one.value;
            for (int j = 0; j < columns; j++) {
                double x = data.design(i, j);
                gradient[j] += one.byLocation * x;
                negativeHessian[columns * size + j] -= one.byBoth * x;
                for (int k = 0; k <= j; k++) {
                    negativeHessian[j * size + k] -= one.byLocationTwice * x * data.design(i, k);
                }
            }
            gradient[columns] += one.byLogScale;
            negativeHessian[columns * size + columns] -= one.byLogScaleTwice;
        }
    }

    /** Not a number where the likelihood overflows, which no comparison accepts. */
    double value() {
        return logLikelihood + logPrior;
    }

    double[] gradient() {
        return gradient;
    }

    double[] moved(double[] direction, double length) {
        var there = point.clone();
        for (int j = 0; j < there.length; j++) {
            there[j] += length * direction[j];
        }
        return there;
    }

    /** H⁻¹ (J + P) H⁻¹, with J the outer products of the groups' slopes and P the priors' precision. */
    private double[] sandwich(CensoredSample data, List<int[]> groups) {
        int size = point.length;
        var middle = priorPrecision.clone();
        for (int[] group : groups) {
            var slope = new double[size];
            for (int row : group) {
                addSlope(data, row, slope);
            }
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    middle[i * size + j] += slope[i] * slope[j];
                }
            }
        }
        var inverse = curvature().inverse();
        return product(product(inverse, middle, size), inverse, size);
    }

    private void addSlope(CensoredSample data, int row, double[] slope) {
        int columns = point.length - 1;
        double location = 0;
        for (int j = 0; j < columns; j++) {
            location += data.design(row, j) * point[j];
        }
        var one = new CensoredLikelihood();
        one.set(data.logAfter(row), data.logBy(row), location, Math.exp(point[columns]));
        for (int j = 0; j < columns; j++) {
            slope[j] += one.byLocation * data.design(row, j);
        }
        slope[columns] += one.byLogScale;
    }

    private static double[] product(double[] one, double[] other, int size) {
        var product = new double[size * size];
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < size; k++) {
                for (int j = 0; j < size; j++) {
                    product[i * size + j] += one[i * size + k] * other[k * size + j];
                }
            }
        }
        return product;
    }

    /** The negative Hessian, shifted where it is not positive definite. */
    CholeskyFactor curvature() {
        return CholeskyFactor.nearest(negativeHessian, point.length);
    }

    /**
     * The fit at this point.
     *
     * @param groups of rows that hang together: their slopes stand in the middle of the covariance; empty when each row
     *     stands by itself
     */
    WeibullFit toFit(CensoredSample data, List<int[]> groups) {
        int size = point.length;
        if (!held && CholeskyFactor.find(negativeHessian, size).isEmpty()) {
            throw new IllegalArgumentException(
                    "the data leave a coefficient open, expected data or priors that hold each one");
        }
        var inverse = groups.isEmpty() ? curvature().inverse() : sandwich(data, groups);
        return new WeibullFit(
                Arrays.stream(point, 0, size - 1).boxed().toList(),
                Math.exp(point[size - 1]),
                Arrays.stream(inverse).boxed().toList(),
                logLikelihood);
    }
}
