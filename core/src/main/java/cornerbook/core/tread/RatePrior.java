package cornerbook.core.tread;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.CholeskyFactor;
import cornerbook.core.numeric.Estimate;

/**
 * The prior of the rates of each groove at each corner, r_cg = m_c (1 + w_cg), w ~ N(0, C), C = ω_u² for the car, and ω_v²
 * more for the same corner, and ω_g² more for the same groove.
 */
final class RatePrior {
    static final int CORNERS = Corner.values().length;
    static final int RATES = Spot.values().length * CORNERS;

    private final double[] means = new double[RATES];
    private final double car;
    /** C⁻¹, row-major. */
    private final double[] inverse;

    RatePrior(WearParameters parameters) {
        for (int rate = 0; rate < RATES; rate++) {
            means[rate] = parameters.rate(axle(rate));
        }
        car = square(parameters.vehicleSpread());
        double corner = square(parameters.of(WearParameter.CORNER_SPREAD));
        double groove = square(parameters.of(WearParameter.GROOVE_SPREAD));
        var covariance = new double[RATES * RATES];
        for (int i = 0; i < RATES; i++) {
            for (int j = 0; j < RATES; j++) {
                covariance[i * RATES + j] = car + (i % CORNERS == j % CORNERS ? corner : 0) + (i == j ? groove : 0);
            }
        }
        inverse = CholeskyFactor.find(covariance, RATES).orElseThrow().inverse();
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

    /** One rate before any reading, mm per 1000 km. */
    static Estimate of(WearParameters parameters, Corner corner) {
        double mean = parameters.rate(corner.axle());
        return new Estimate(
                mean,
                mean
                        * Math.sqrt(square(parameters.vehicleSpread())
                                + square(parameters.of(WearParameter.CORNER_SPREAD))
                                + square(parameters.of(WearParameter.GROOVE_SPREAD))));
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

    private static double square(double value) {
        return value * value;
    }
}
