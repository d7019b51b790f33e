package cornerbook.core.tread;

/** Posterior of one groove: depths of the tyres when new to the book, then the rates of the four corners. */
final class GaussianPosterior {
    private final PosteriorPrecision precision;
    private final double[] mean;

    GaussianPosterior(PosteriorPrecision precision, double[] mean) {
        this.precision = precision;
        this.mean = mean;
    }

    PosteriorPrecision precision() {
        return precision;
    }

    double mean(int unknown) {
        return mean[unknown];
    }

    double covariance(int unknown, int other) {
        return precision.covariance(unknown, other);
    }
}
