package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Draws of all depths and rates of a set from their joint posterior, x = mean + L z with L the Cholesky factor of the
 * covariance and z standard normal. A draw with a rate below what a tread wears is drawn again: {@link WearingRates}
 * leaves no rate's mean nearer to that than its standard deviation, so that a third of the draws and more are kept.
 */
public final class PosteriorDraws {
    private final WearPosterior posterior;
    private final List<double[]> lower = new ArrayList<>();
    private final int unknowns;

    public PosteriorDraws(WearPosterior posterior) {
        this.posterior = posterior;
        unknowns = posterior.tyres() + Corner.values().length;
        for (var spot : Spot.values()) {
            lower.add(factor(posterior.groove(spot)));
        }
    }

    /** One draw. */
    public Draw next(RandomGenerator random) {
        var byGroove = new ArrayList<double[]>();
        for (var spot : Spot.values()) {
            double[] draw;
            do {
                draw = draw(spot, random);
            } while (!ratesPositive(draw));
            byGroove.add(draw);
        }
        return new Draw(posterior, byGroove);
    }

    /** Depths and rates as they may be. */
    public static final class Draw {
        private final WearPosterior posterior;
        private final List<double[]> byGroove;

        private Draw(WearPosterior posterior, List<double[]> byGroove) {
            this.posterior = posterior;
            this.byGroove = byGroove;
        }

        /** Depth of a tyre that has run {@code run}, mm. */
        public double depthMm(Spot groove, int tyre, CornerDistances run) {
            var draw = byGroove.get(groove.ordinal());
            double depth = draw[tyre];
            for (var corner : Corner.values()) {
                depth -= run.at(corner) * draw[posterior.tyres() + corner.ordinal()];
            }
            return depth;
        }

        /** Wear rate of a corner, mm per 1000 km, above 0. */
        public double rateMmPer1000Km(Spot groove, Corner corner) {
            return byGroove.get(groove.ordinal())[posterior.tyres() + corner.ordinal()];
        }
    }

    private double[] draw(Spot spot, RandomGenerator random) {
        var factor = lower.get(spot.ordinal());
        var standard = new double[unknowns];
        var draw = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            standard[i] = random.nextGaussian();
            draw[i] = posterior.groove(spot).mean(i);
            for (int k = 0; k <= i; k++) {
                draw[i] += factor[i * unknowns + k] * standard[k];
            }
        }
        return draw;
    }

    private boolean ratesPositive(double[] draw) {
        for (int i = posterior.tyres(); i < unknowns; i++) {
            if (draw[i] < WearingRates.LEAST_MM_PER_1000_KM) {
                return false;
            }
        }
        return true;
    }

    private double[] factor(GaussianPosterior groove) {
        var factor = new double[unknowns * unknowns];
        for (int j = 0; j < unknowns; j++) {
            for (int i = j; i < unknowns; i++) {
                double sum = groove.covariance(i, j);
                for (int k = 0; k < j; k++) {
                    sum -= factor[i * unknowns + k] * factor[j * unknowns + k];
                }
                factor[i * unknowns + j] = i == j ? Math.sqrt(sum) : sum / factor[j * unknowns + j];
            }
        }
        return factor;
    }
}
