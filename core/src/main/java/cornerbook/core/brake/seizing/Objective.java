package cornerbook.core.brake.seizing;

import cornerbook.core.numeric.CholeskyFactor;
import java.util.Arrays;
import java.util.List;

/** The penalised log-likelihood of a sample at one point (β, log σ), with its gradient and the negative of its Hessian. */
final class Objective {
    private final double[] point;
    private final double[] gradient;
    private final double[] negativeHessian;
    private double logLikelihood;
    private double logPrior;
    /** Whether every parameter has a proper prior. */
    private boolean held = true;

    Objective(CensoredSample data, List<NormalPrior> coefficientPriors, NormalPrior logScalePrior, double[] point) {
        int size = point.length;
        this.point = point;
        gradient = new double[size];
        negativeHessian = new double[size * size];
        addData(data);
        for (int j = 0; j < size; j++) {
            var prior = j < size - 1 ? coefficientPriors.get(j) : logScalePrior;
            double away = point[j] - prior.mean();
            double precision = prior.precision();
            held &= precision > 0;
            logPrior -= 0.5 * precision * away * away;
            gradient[j] -= precision * away;
            negativeHessian[j * size + j] += precision;
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

    /** The negative Hessian, shifted where it is not positive definite. */
    CholeskyFactor curvature() {
        return CholeskyFactor.nearest(negativeHessian, point.length);
    }

    WeibullFit toFit() {
        int size = point.length;
        if (!held && CholeskyFactor.find(negativeHessian, size).isEmpty()) {
            throw new IllegalArgumentException(
                    "the data leave a coefficient open, expected data or priors that hold each one");
        }
        var inverse = curvature().inverse();
        return new WeibullFit(
                Arrays.stream(point, 0, size - 1).boxed().toList(),
                Math.exp(point[size - 1]),
                Arrays.stream(inverse).boxed().toList(),
                logLikelihood);
    }
}
