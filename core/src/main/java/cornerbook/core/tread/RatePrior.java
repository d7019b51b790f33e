package cornerbook.core.tread;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.CholeskyFactor;
import cornerbook.core.numeric.Estimate;
import java.util.Arrays;

/**
 * The prior of the rates of each groove at each corner, r_cg = m_c (1 + w_cg), w ~ N(0, C), C = ω_u² for the car, and ω_v²
 * more for the same corner, and ω_g² more for the same groove; after them, what earlier {@link Drivers} add to the car's factor.
 */
final class RatePrior {
    static final int CORNERS = Corner.values().length;
    static final int RATES = Spot.values().length * CORNERS;

    private final int size;
    private final double[] means = new double[RATES];
    private final double car;
    /** Covariances of the car's factor with the unknowns, in units of ω_u². */
    private final double[] withFactor;
    /** C⁻¹, row-major. */
    private final double[] inverse;

    RatePrior(WearParameters parameters) {
        this(parameters, Drivers.ONE);
    }

    RatePrior(WearParameters parameters, Drivers drivers) {
        size = RATES + drivers.earlier();
        for (int rate = 0; rate < RATES; rate++) {
            means[rate] = parameters.rate(axle(rate));
        }
        car = square(parameters.vehicleSpread());
        double corner = square(parameters.of(WearParameter.CORNER_SPREAD));
        double groove = square(parameters.of(WearParameter.GROOVE_SPREAD));
        withFactor = new double[size];
        Arrays.fill(withFactor, 0, RATES, 1);
        var covariance = new double[size * size];
        for (int i = 0; i < RATES; i++) {
            for (int j = 0; j < RATES; j++) {
                covariance[i * size + j] = car + (i % CORNERS == j % CORNERS ? corner : 0) + (i == j ? groove : 0);
            }
        }
        double driver = Drivers.SHARE * car;
        for (int k = 0; k < drivers.earlier(); k++) {
            withFactor[RATES + k] = Drivers.SHARE * drivers.withFactor(k);
            for (int rate = 0; rate < RATES; rate++) {
                covariance[(RATES + k) * size + rate] = driver * drivers.withFactor(k);
                covariance[rate * size + RATES + k] = driver * drivers.withFactor(k);
            }
            for (int other = 0; other < drivers.earlier(); other++) {
                covariance[(RATES + k) * size + RATES + other] = driver * drivers.covariance(k, other);
            }
        }
        inverse = CholeskyFactor.find(covariance, size).orElseThrow().inverse();
    }

    /** How many unknowns it is of: all rates, and what each of the earlier drivers adds. */
    int size() {
        return size;
    }

    /** Place of a rate among all of them. */
    static int place(Spot spot, Corner corner) {
        return spot.ordinal() * CORNERS + corner.ordinal();
    }

    private static Axle axle(int rate) {
        return Corner.values()[rate % CORNERS].axle();
    }

    /** Mean of a rate, mm per 1000 km; nothing of what an earlier driver adds. */
    double mean(int unknown) {
        return unknown < RATES ? means[unknown] : 0;
    }

    /** What an unknown is relative to: its mean, or 1. */
    double unit(int unknown) {
        return unknown < RATES ? means[unknown] : 1;
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

    /** Covariance of the car's factor with an unknown in its unit, as a share of ω_u². */
    double withFactor(int unknown) {
        return withFactor[unknown];
    }

    /** How much an unknown in its unit weighs in what all of them together say of the car. */
    double shareOfCar(int unknown) {
        double sum = 0;
        for (int j = 0; j < size; j++) {
            sum += withFactor[j] * inverse[unknown * size + j];
        }
        return car * sum;
    }

    double precision(int unknown, int other) {
        return inverse[unknown * size + other] / (unit(unknown) * unit(other));
    }

    /** Row of the precision times the means. */
    double weightedMean(int unknown) {
        double sum = 0;
        for (int j = 0; j < RATES; j++) {
            sum += inverse[unknown * size + j];
        }
        return sum / unit(unknown);
    }

    private static double square(double value) {
        return value * value;
    }
}
