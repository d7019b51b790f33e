package cornerbook.core.tread;

import cornerbook.core.numeric.CholeskyFactor;

/** Precision A of a Gaussian posterior, factored once, with its inverse, the covariance. */
final class PosteriorPrecision {
    private final int size;
    private final CholeskyFactor factor;
    private final double[] covariance;

    /**
     * Factors A.
     *
     * @param matrix row-major; only the lower triangle is read
     */
    PosteriorPrecision(double[] matrix, int size) {
        this.size = size;
        factor = CholeskyFactor.find(matrix, size)
                .orElseThrow(() -> new IllegalArgumentException("the precision is not positive definite"));
        covariance = factor.inverse();
    }

    /** The Gaussian with precision A and A · mean = {@code right}. */
    GaussianPosterior solve(double[] right) {
        return new GaussianPosterior(this, factor.solve(right));
    }

    double logDeterminant() {
        return factor.logDeterminant();
    }

    double covariance(int unknown, int other) {
        return covariance[unknown * size + other];
    }
}
