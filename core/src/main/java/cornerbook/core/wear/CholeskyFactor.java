package cornerbook.core.wear;

import java.util.Arrays;

/** Cholesky factor A = L Lᵀ of a positive definite matrix, with the inverse of A. Row-major. */
final class CholeskyFactor {
    private final int size;
    private final double[] lower;
    private final double[] inverse;

    private CholeskyFactor(int size, double[] lower) {
        this.size = size;
        this.lower = lower;
        this.inverse = new double[size * size];
        var column = new double[size];
        for (int j = 0; j < size; j++) {
            Arrays.fill(column, 0);
            column[j] = 1;
            solveInPlace(column);
            for (int i = 0; i < size; i++) {
                inverse[i * size + j] = column[i];
            }
        }
    }

    /** Only the lower triangle of {@code matrix} is read; it is overwritten. */
    static CholeskyFactor ofLowerTriangle(double[] matrix, int size) {
        for (int j = 0; j < size; j++) {
            double diagonal = matrix[j * size + j];
            for (int k = 0; k < j; k++) {
                diagonal -= matrix[j * size + k] * matrix[j * size + k];
            }
            if (!(diagonal > 0)) {
                throw new IllegalArgumentException("the matrix is not positive definite at row " + j);
            }
            double root = Math.sqrt(diagonal);
            matrix[j * size + j] = root;
            for (int i = j + 1; i < size; i++) {
                double sum = matrix[i * size + j];
                for (int k = 0; k < j; k++) {
                    sum -= matrix[i * size + k] * matrix[j * size + k];
                }
                matrix[i * size + j] = sum / root;
            }
        }
        return new CholeskyFactor(size, matrix);
    }

    /** The Gaussian with precision A and A · mean = {@code right}. */
    GaussianPosterior solve(double[] right) {
        solveInPlace(right);
        return new GaussianPosterior(this, right);
    }

    /** Logarithm of the determinant of A. */
    double logDeterminant() {
        double log = 0;
        for (int i = 0; i < size; i++) {
            log += 2 * Math.log(lower[i * size + i]);
        }
        return log;
    }

    /** Element of A⁻¹. */
    double inverse(int row, int column) {
        return inverse[row * size + column];
    }

    private void solveInPlace(double[] vector) {
        for (int i = 0; i < size; i++) {
            double sum = vector[i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i * size + k] * vector[k];
            }
            vector[i] = sum / lower[i * size + i];
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = vector[i];
            for (int k = i + 1; k < size; k++) {
                sum -= lower[k * size + i] * vector[k];
            }
            vector[i] = sum / lower[i * size + i];
        }
    }
}
