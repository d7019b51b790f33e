package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.random.RandomGenerator;

/**
 * Draws of all depths and rates of a set from their joint posterior, x = mean + L z with L the Cholesky factor of the
 * covariance and z standard normal. A draw with a rate below what a tread wears is drawn again: {@link WearingRates}
 * leaves no rate's mean nearer to that than its standard deviation.
 */
public final class PosteriorDraws {
    private final WearPosterior posterior;
    private final GaussianPosterior gaussian;
    private final double[] lower;

    public PosteriorDraws(WearPosterior posterior) {
        this.posterior = posterior;
        gaussian = posterior.gaussian();
        lower = factor(gaussian);
    }

    /** One draw. */
    public Draw next(RandomGenerator random) {
        double[] draw;
        do {
            draw = draw(random);
        } while (!ratesPositive(draw));
        return new Draw(posterior, draw);
    }

    /** Depths and rates as they may be. */
    public static final class Draw {
        private final WearPosterior posterior;
        private final double[] unknowns;

        private Draw(WearPosterior posterior, double[] unknowns) {
            this.posterior = posterior;
            this.unknowns = unknowns;
        }

        /** Depth of a tyre that has run {@code run}, mm. */
        public double depthMm(Spot groove, int tyre, CornerDistances run) {
            var weights = posterior.weights(groove, tyre, run);
            double effectiveMm = posterior.stated(tyre);
            for (int i = 0; i < weights.length; i++) {
                effectiveMm += weights[i] * unknowns[i];
            }
            return posterior.scale(tyre).depth(effectiveMm);
        }

        /** Wear rate of a corner, mm per 1000 km, above 0. */
        public double rateMmPer1000Km(Spot groove, Corner corner) {
            return unknowns[posterior.rateAt(groove, corner)];
        }
    }

    private double[] draw(RandomGenerator random) {
        int unknowns = gaussian.means().length;
        var standard = new double[unknowns];
        var draw = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            standard[i] = random.nextGaussian();
            draw[i] = gaussian.mean(i);
            for (int k = 0; k <= i; k++) {
                draw[i] += lower[i * unknowns + k] * standard[k];
            }
        }
        return draw;
    }

    private boolean ratesPositive(double[] draw) {
        for (var groove : Spot.values()) {
            for (var corner : Corner.values()) {
                if (draw[posterior.rateAt(groove, corner)] < WearingRates.LEAST_MM_PER_1000_KM) {
                    return false;
                }
            }
        }
        return true;
    }

    private static double[] factor(GaussianPosterior gaussian) {
        int unknowns = gaussian.means().length;
        var factor = new double[unknowns * unknowns];
        for (int j = 0; j < unknowns; j++) {
            for (int i = j; i < unknowns; i++) {
                double sum = gaussian.covariance(i, j);
                for (int k = 0; k < j; k++) {
                    sum -= factor[i * unknowns + k] * factor[j * unknowns + k];
                }
                factor[i * unknowns + j] = i == j ? Math.sqrt(Math.max(0, sum)) : sum / factor[j * unknowns + j];
            }
        }
        return factor;
    }
}
