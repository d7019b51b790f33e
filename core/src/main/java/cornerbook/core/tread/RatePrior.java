package cornerbook.core.tread;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.CholeskyFactor;

/**
 * The prior of the rates of each groove at each corner, r_cg = m_c (1 + w_cg), w ~ N(0, C), C = ω_u² for the car, and ω_v²
 * more for the same corner, and ω_g² more for the same groove.
 */
final class RatePrior {
    static final int CORNERS = Corner.values().length;
    static final int RATES = Spot.values().length * CORNERS;

    private final double[] means = new double[RATES];
    private final double car;
    private final double corner;
    private final double groove;
    /** C⁻¹, row-major. */
    private final double[] inverse;

    private final double logDeterminant;

    RatePrior(WearParameters parameters) {
        for (int rate = 0; rate < RATES; rate++) {
            means[rate] = parameters.rate(axle(rate));
        }
        car = square(parameters.vehicleSpread());
        corner = square(parameters.of(WearParameter.CORNER_SPREAD));
        groove = square(parameters.of(WearParameter.GROOVE_SPREAD));
        var covariance = new double[RATES * RATES];
        for (int i = 0; i < RATES; i++) {
            for (int j = 0; j < RATES; j++) {
                covariance[i * RATES + j] = car + (i % CORNERS == j % CORNERS ? corner : 0) + (i == j ? groove : 0);
            }
        }
        var factor = CholeskyFactor.find(covariance, RATES).orElseThrow();
        inverse = factor.inverse();
        double log = -factor.logDeterminant();
        for (double mean : means) {
            log -= 2 * Math.log(mean);
        }
        logDeterminant = log;
    }

    /** Place of a rate among all of them. */
    static int place(Spot spot, Corner corner) {
        return spot.ordinal() * CORNERS + corner.ordinal();
    }

    private static Axle axle(int rate) {
        return Corner.values()[rate % CORNERS].axle();
    }

    /** Mean of a rate, mm per 1000 km. */
    double mean(int rate) {
        return means[rate];
    }

    /** ω_u². */
    double carVariance() {
        return car;
    }

    /** How much a rate, relative to its mean, weighs in what all rates together say of the car. */
    double shareOfCar(int rate) {
        double sum = 0;
        for (int j = 0; j < RATES; j++) {
            sum += inverse[rate * RATES + j];
        }
        return car * sum;
    }

    double precision(int rate, int other) {
        return inverse[rate * RATES + other] / (means[rate] * means[other]);
    }

    /** Row of the precision times the means. */
    double weightedMean(int rate) {
        double sum = 0;
        for (int j = 0; j < RATES; j++) {
            sum += inverse[rate * RATES + j];
        }
        return sum / means[rate];
    }

    /** Means times precision times means. */
    double squaredMean() {
        double sum = 0;
        for (double element : inverse) {
            sum += element;
        }
        return sum;
    }

    /** Logarithm of the determinant of the precision. */
    double logDeterminant() {
        return logDeterminant;
    }

    /**
     * Expected slope of the logarithm of this prior's density, over the posterior.
     *
     * @param first place of the first rate among the unknowns
     * @param slope by {@link WearParameter}, added to
     */
    void addSlope(GaussianPosterior posterior, int first, double[] slope) {
        var off = new double[RATES];
        for (int i = 0; i < RATES; i++) {
            off[i] = posterior.mean(first + i) / means[i] - 1;
        }
        var square = new double[RATES * RATES];
        for (int i = 0; i < RATES; i++) {
            for (int j = 0; j < RATES; j++) {
                square[i * RATES + j] =
                        off[i] * off[j] + posterior.covariance(first + i, first + j) / (means[i] * means[j]);
            }
        }
        var weighted = product(inverse, square);
        var curved = product(weighted, inverse);
        for (int i = 0; i < RATES; i++) {
            double towards = 0;
            for (int j = 0; j < RATES; j++) {
                double q = curved[i * RATES + j] - inverse[i * RATES + j];
                slope[WearParameter.VEHICLE_SPREAD.ordinal()] += car * q;
                slope[WearParameter.CORNER_SPREAD.ordinal()] += i % CORNERS == j % CORNERS ? corner * q : 0;
                slope[WearParameter.GROOVE_SPREAD.ordinal()] += i == j ? groove * q : 0;
                towards += inverse[i * RATES + j] * off[j];
            }
            var rate = axle(i) == Axle.FRONT ? WearParameter.FRONT_RATE : WearParameter.REAR_RATE;
            slope[rate.ordinal()] += towards + weighted[i * RATES + i] - 1;
        }
    }

    private static double[] product(double[] one, double[] other) {
        var product = new double[RATES * RATES];
        for (int i = 0; i < RATES; i++) {
            for (int k = 0; k < RATES; k++) {
                double factor = one[i * RATES + k];
                for (int j = 0; j < RATES; j++) {
                    product[i * RATES + j] += factor * other[k * RATES + j];
                }
            }
        }
        return product;
    }

    private static double square(double value) {
        return value * value;
    }
}
