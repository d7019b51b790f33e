package cornerbook.core.wear;

/** Posterior of one groove: depths of the tyres when new to the book, then the rates of the four corners. */
final class GaussianPosterior {
    private final CholeskyFactor factor;
    private final double[] mean;

    GaussianPosterior(CholeskyFactor factor, double[] mean) {
        this.factor = factor;
        this.mean = mean;
    }

    CholeskyFactor factor() {
        return factor;
    }

    double mean(int unknown) {
        return mean[unknown];
    }

    double covariance(int unknown, int other) {
        return factor.inverse(unknown, other);
    }
}
