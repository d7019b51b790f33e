package cornerbook.core.brake.seizing;

import java.util.List;

/** Censored times with their covariates, laid out for a fit: logarithms of the ends, and one row of the design per time. */
final class CensoredSample {
    private final double[] logAfter;
    private final double[] logBy;
    private final double[] design;
    private final int columns;

    CensoredSample(List<CensoredTime> times, List<List<Double>> covariates, int columns) {
        if (times.size() != covariates.size()) {
            throw new IllegalArgumentException(
                    "%s times with %s rows of covariates, expected as many".formatted(times.size(), covariates.size()));
        }
        this.columns = columns;
        logAfter = new double[times.size()];
        logBy = new double[times.size()];
        design = new double[times.size() * columns];
        for (int i = 0; i < times.size(); i++) {
            var row = covariates.get(i);
            if (row.size() != columns - 1) {
                throw new IllegalArgumentException(
                        "row %s has %s covariates, expected %s".formatted(i, row.size(), columns - 1));
            }
            logAfter[i] = Math.log(times.get(i).after());
            logBy[i] = Math.log(times.get(i).by());
            design[i * columns] = 1;
            for (int j = 1; j < columns; j++) {
                double value = row.get(j - 1);
                if (!Double.isFinite(value)) {
                    throw new IllegalArgumentException(
                            "covariate %s of row %s is %s, expected a finite number".formatted(j, i, value));
                }
                design[i * columns + j] = value;
            }
        }
    }

    int size() {
        return logAfter.length;
    }

    double logAfter(int row) {
        return logAfter[row];
    }

    double logBy(int row) {
        return logBy[row];
    }

    double design(int row, int column) {
        return design[row * columns + column];
    }

    /** The logarithm of a time within the interval, to start from. */
    double logMiddle(int row) {
        if (logBy[row] == Double.POSITIVE_INFINITY) {
            return logAfter[row] == Double.NEGATIVE_INFINITY ? 0 : logAfter[row];
        }
        return logAfter[row] == Double.NEGATIVE_INFINITY ? logBy[row] : 0.5 * (logAfter[row] + logBy[row]);
    }
}
