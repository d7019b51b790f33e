package cornerbook.core.tread;

import cornerbook.core.numeric.Estimate;

/**
 * How fast a car wears its tyres against others that are alike: the factor F that all of its rates share, r_cg = m_c (F +
 * v_c + w_cg). It is the product of many things, as roads, loads and a driver's temper, and never below nothing, so it is
 * log-normal before any reading: some cars wear tyres twice as fast as usual, none wears them by nothing. With mean 1 and
 * variance ω²,
 *
 * <pre>  log F ~ N(−s²/2, s²),   s² = log(1 + ω²)                                                        (1)</pre>
 *
 * The rates' Gaussian prior has the same mean and variance. Given F all else stays Gaussian, so only the one dimension of F
 * has to be put right: with M and V the mean and variance of F in the Gaussian posterior, its readings say as much of F as
 *
 * <pre>  L(F) ∝ exp(−λF²/2 + κF),   λ = 1/V − 1/ω²,   κ = M/V − 1/ω²                                      (2)</pre>
 *
 * and (1) times (2) is integrated for its mean and variance. The Gaussian next to the posterior under (1) is the one with
 * these (expectation propagation with one site, Minka 2001, UAI 17:362).
 */
final class CarFactor {
    private static final int HALVINGS = 40;
    /** The mode lies within so many standard deviations of log F. */
    private static final double FARTHEST = 40;

    private static final int STEPS = 24;
    /** The integral reaches so many standard deviations each side of the mode. */
    private static final double REACH = 6;

    private final int first;
    /** Of each rate, and of what each earlier driver adds, in the expectation of F given all of them. */
    private final double[] weights;

    private final double constant;
    private final double unexplained;
    private final double priorVariance;

    /**
     * The factor of a car with this prior.
     *
     * @param first place of the first rate among the unknowns
     */
    CarFactor(RatePrior prior, int first) {
        this.first = first;
        weights = new double[prior.size()];
        double explained = 0;
        double ofMeans = 0;
        for (int unknown = 0; unknown < weights.length; unknown++) {
            double share = prior.shareOfCar(unknown);
            explained += share * prior.withFactor(unknown);
            weights[unknown] = share / prior.unit(unknown);
            ofMeans += share * (prior.mean(unknown) / prior.unit(unknown));
        }
        constant = 1 - ofMeans;
        priorVariance = prior.carVariance();
        unexplained = priorVariance * (1 - explained);
    }

    /** Mean of F. */
    double mean(GaussianPosterior posterior) {
        double mean = constant;
        for (int rate = 0; rate < weights.length; rate++) {
            mean += weights[rate] * posterior.mean(first + rate);
        }
        return mean;
    }

    /** Covariances of F with each unknown. */
    double[] covariances(GaussianPosterior posterior) {
        var covariances = new double[posterior.means().length];
        for (int rate = 0; rate < weights.length; rate++) {
            for (int i = 0; i < covariances.length; i++) {
                covariances[i] += weights[rate] * posterior.covariance(first + rate, i);
            }
        }
        return covariances;
    }

    /** Variance of F. */
    double variance(double[] covariances) {
        return unexplained + ofRates(covariances);
    }

    /** The part of that variance that the rates have. */
    double ofRates(double[] covariances) {
        double variance = 0;
        for (int rate = 0; rate < weights.length; rate++) {
            variance += weights[rate] * covariances[first + rate];
        }
        return variance;
    }

    /** The Gaussian next to the posterior under (1). */
    GaussianPosterior logNormal(GaussianPosterior posterior) {
        double mean = mean(posterior);
        var covariances = covariances(posterior);
        double variance = variance(covariances);
        double precision = Math.max(0, 1 / variance - 1 / priorVariance);
        var asked = new Likelihood(precision, mean / variance - 1 / priorVariance).underPrior(priorVariance);
        double step = (asked.mean() - mean) / variance;
        double growth = (asked.sd() * asked.sd() - variance) / (variance * variance);
        var means = posterior.means().clone();
        var all = posterior.covariances().clone();
        for (int i = 0; i < means.length; i++) {
            means[i] += step * covariances[i];
            double factor = growth * covariances[i];
            for (int j = 0; j < means.length; j++) {
                all[i * means.length + j] += factor * covariances[j];
            }
        }
        return new GaussianPosterior(means, all);
    }

    /**
     * L of (2).
     *
     * @param precision λ, 0 or more
     * @param weight κ
     */
    private record Likelihood(double precision, double weight) {
        /** Mean and standard deviation of (1) times (2), by the trapezoidal rule in log F about the mode. */
        Estimate underPrior(double variance) {
            double square = Math.log1p(variance);
            double mode = mode(square);
            double atMode = Math.exp(mode);
            double bend = 1 / square + Math.max(0, (2 * precision * atMode - weight) * atMode);
            double top = log(mode, square);
            double sum = 0;
            double ofOff = 0;
            double ofSquare = 0;
            for (int k = -STEPS; k <= STEPS; k++) {
                double x = mode + REACH / Math.sqrt(bend) * k / STEPS;
                double density = Math.exp(log(x, square) - top);
                double off = Math.exp(x) - atMode;
                sum += density;
                ofOff += density * off;
                ofSquare += density * off * off;
            }
            double off = ofOff / sum;
            return new Estimate(atMode + off, Math.sqrt(ofSquare / sum - off * off));
        }

        /** Logarithm of the density of log F, up to a constant. */
        private double log(double x, double square) {
            double factor = Math.exp(x);
            double away = x + square / 2;
            return -away * away / (2 * square) + factor * (weight - precision * factor / 2);
        }

        private double mode(double square) {
            double low = -FARTHEST * Math.sqrt(square);
            double high = FARTHEST * Math.sqrt(square);
            for (int halving = 0; halving < HALVINGS; halving++) {
                double x = (low + high) / 2;
                double factor = Math.exp(x);
                boolean rises = factor * (weight - precision * factor) > (x + square / 2) / square;
                low = rises ? x : low;
                high = rises ? high : x;
            }
            return (low + high) / 2;
        }
    }
}
