package cornerbook.core.tread;

/** What is known of all unknowns of a set together. */
final class GaussianPosterior {
    private final double[] means;
    private final double[] covariances;

    /**
     * A Gaussian.
     *
     * @param covariances row-major; neither is copied
     */
    GaussianPosterior(double[] means, double[] covariances) {
        this.means = means;
        this.covariances = covariances;
    }

    double[] means() {
        return means;
    }

    double[] covariances() {
        return covariances;
    }

    double mean(int unknown) {
        return means[unknown];
    }

    double covariance(int unknown, int other) {
        return covariances[unknown * means.length + other];
    }

    double mean(double[] weights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * means[i];
        }
        return sum;
    }

    double covariance(double[] weights, double[] others) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] != 0) {
                double row = 0;
                for (int j = 0; j < others.length; j++) {
                    row += covariances[i * means.length + j] * others[j];
                }
                sum += weights[i] * row;
            }
        }
        return sum;
    }

    /** Covariances of each unknown with a weighted sum of them. */
    double[] times(double[] weights) {
        var products = new double[means.length];
        for (int i = 0; i < products.length; i++) {
            double sum = 0;
            for (int j = 0; j < weights.length; j++) {
                sum += covariances[i * means.length + j] * weights[j];
            }
            products[i] = sum;
        }
        return products;
    }
}
