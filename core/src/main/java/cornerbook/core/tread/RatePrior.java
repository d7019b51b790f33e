package cornerbook.core.tread;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;

/**
 * The prior of the four corners' rates, r_c = m_c (1 + w_c), w ~ N(0, C), C = ω_v² I + ω_u² 1 1ᵀ, whose inverse is (I − κ
 * 1 1ᵀ) / ω_v² with κ = ω_u² / q, q = ω_v² + 4 ω_u² (Sherman–Morrison).
 */
final class RatePrior {
    private static final int CORNERS = Corner.values().length;

    private final double[] rates = new double[CORNERS];
    private final double own;
    private final double vehicle;
    /** Variance of the mean of the four factors, times four. */
    private final double q;

    RatePrior(WearParameters parameters) {
        for (var corner : Corner.values()) {
            rates[corner.ordinal()] = parameters.rate(corner.axle());
        }
        own = parameters.cornerSpread() * parameters.cornerSpread();
        vehicle = parameters.vehicleSpread() * parameters.vehicleSpread();
        q = own + CORNERS * vehicle;
    }

    double precision(int corner, int other) {
        return ((corner == other ? 1 : 0) - vehicle / q) / (own * rates[corner] * rates[other]);
    }

    /** Row of the precision times the means. */
    double weightedMean(int corner) {
        return 1 / (q * rates[corner]);
    }

    /** Means times precision times means. */
    double squaredMean() {
        return CORNERS / q;
    }

    /** Logarithm of the determinant of the precision. */
    double logDeterminant() {
        double log = -(CORNERS - 1) * Math.log(own) - Math.log(q);
        for (double rate : rates) {
            log -= 2 * Math.log(rate);
        }
        return log;
    }

    /** Expected slope of the logarithm of this prior's density, over the posterior. */
    void addSlope(GaussianPosterior posterior, int tyres, double[] slope) {
        var mean = new double[CORNERS];
        var square = new double[CORNERS][CORNERS];
        var column = new double[CORNERS];
        double meanSum = 0;
        double all = 0;
        for (int c = 0; c < CORNERS; c++) {
            mean[c] = posterior.mean(tyres + c) / rates[c] - 1;
            meanSum += mean[c];
        }
        for (int c = 0; c < CORNERS; c++) {
            for (int k = 0; k < CORNERS; k++) {
                square[c][k] = mean[c] * mean[k] + posterior.covariance(tyres + c, tyres + k) / (rates[c] * rates[k]);
                column[k] += square[c][k];
                all += square[c][k];
            }
        }
        double kappa = vehicle / q;
        double trace = 0;
        for (int c = 0; c < CORNERS; c++) {
            double weighted = (square[c][c] - kappa * column[c]) / own;
            double weightedRow = (column[c] - kappa * all) / own;
            trace += (weighted - kappa * weightedRow) / own;
            double towards = (mean[c] - kappa * meanSum) / own;
            int place = Corner.values()[c].axle() == Axle.FRONT ? SetLikelihood.FRONT_RATE : SetLikelihood.REAR_RATE;
            slope[place] += towards + weighted - 1;
        }
        slope[SetLikelihood.CORNER_SPREAD] += own * trace - CORNERS * (1 - kappa);
        slope[SetLikelihood.VEHICLE_SPREAD] += vehicle * (all / (q * q) - CORNERS / q);
    }
}
