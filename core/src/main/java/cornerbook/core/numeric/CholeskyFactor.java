package cornerbook.core.numeric;

import java.util.Arrays;
import java.util.Optional;

/**
 * Cholesky factor A = L Lᵀ of a symmetric positive definite matrix, row-major, of a size up to a few dozen. Source: Golub
 * and Van Loan, Matrix Computations, algorithm 4.2.
 */
public final class CholeskyFactor {
    private static final double FIRST_SHIFT = 1e-6;
    private static final double LARGEST_SHIFT = 1e12;

    private final int size;
    private final double[] lower;

    private CholeskyFactor(int size, double[] lower) {
        this.size = size;
        this.lower = lower;
    }

    /**
     * The factor, or nothing when the matrix is not positive definite.
     *
     * @param matrix row-major; only the lower triangle is read, and nothing is written
     */
    public static Optional<CholeskyFactor> find(double[] matrix, int size) {
        var lower = matrix.clone();
        for (int j = 0; j < size; j++) {
            double diagonal = lower[j * size + j];
            for (int k = 0; k < j; k++) {
                diagonal -= lower[j * size + k] * lower[j * size + k];
            }
            if (!(diagonal > 0 && diagonal < Double.POSITIVE_INFINITY)) {
                return Optional.empty();
            }
            double root = Math.sqrt(diagonal);
            lower[j * size + j] = root;
            for (int i = j + 1; i < size; i++) {
                double sum = lower[i * size + j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i * size + k] * lower[j * size + k];
                }
                lower[i * size + j] = sum / root;
            }
        }
        return Optional.of(new CholeskyFactor(size, lower));
    }

    /**
     * The factor of the matrix, or, where it is not positive definite, of the matrix with as much of its own diagonal added
     * as makes it so (Levenberg 1944, Quarterly of Applied Mathematics 2:164).
     *
     * @param matrix as for {@link #find}
     * @throws IllegalArgumentException when it has an element that is no finite number
     */
    public static CholeskyFactor nearest(double[] matrix, int size) {
        var shifted = matrix.clone();
        for (double shift = 0; shift < LARGEST_SHIFT; shift = Math.max(FIRST_SHIFT, 10 * shift)) {
            for (int j = 0; j < size; j++) {
                double diagonal = matrix[j * size + j];
                shifted[j * size + j] = diagonal + shift * (1 + Math.abs(diagonal));
            }
            var factor = find(shifted, size);
            if (factor.isPresent()) {
                return factor.get();
            }
        }
        throw new IllegalArgumentException(
                "no curvature in %s, expected finite numbers".formatted(Arrays.toString(matrix)));
    }

    /** The vector x of A x = {@code right}. */
    public double[] solve(double[] right) {
        var vector = right.clone();
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
        return vector;
    }

    /** Logarithm of the determinant of A. */
    public double logDeterminant() {
        double log = 0;
        for (int i = 0; i < size; i++) {
            log += 2 * Math.log(lower[i * size + i]);
        }
        return log;
    }

    /** A⁻¹ = L⁻ᵀ L⁻¹, row-major. */
    public double[] inverse() {
        var below = inverseOfLower();
        var inverse = new double[size * size];
        for (int k = 0; k < size; k++) {
            for (int i = 0; i <= k; i++) {
                double factor = below[k * size + i];
                if (factor == 0) {
                    continue;
                }
                for (int j = 0; j <= i; j++) {
                    inverse[i * size + j] += factor * below[k * size + j];
                }
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                inverse[j * size + i] = inverse[i * size + j];
            }
        }
        return inverse;
    }

    /** L⁻¹, row by row. */
    private double[] inverseOfLower() {
        var inverse = new double[size * size];
        for (int i = 0; i < size; i++) {
            int row = i * size;
            for (int k = 0; k < i; k++) {
                double factor = lower[row + k];
                if (factor == 0) {
                    continue;
                }
                for (int j = 0; j <= k; j++) {
                    inverse[row + j] -= factor * inverse[k * size + j];
                }
            }
            double diagonal = 1 / lower[row + i];
            for (int j = 0; j < i; j++) {
                inverse[row + j] *= diagonal;
            }
            inverse[row + i] = diagonal;
        }
        return inverse;
    }
}
