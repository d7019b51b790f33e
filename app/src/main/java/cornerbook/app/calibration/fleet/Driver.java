package cornerbook.app.calibration.fleet;

import java.util.random.RandomGenerator;

/**
 * Who drives, and how.
 *
 * @param forwardMps2 root mean square of speeding up, m/s² per metre driven
 * @param brakingMps2 the same of braking
 * @param sidewaysMps2 the same of cornering
 * @param kmPerDay mean distance of a day
 */
record Driver(double forwardMps2, double brakingMps2, double sidewaysMps2, double kmPerDay) {
    /** Half of the cars run less; 44 km on average (Statistics Canada, The Daily, 23 August 2007: light vehicles in 2006). */
    private static final double MEDIAN_KM_PER_DAY = 39.5;

    /** Of the logarithm. Common practice, no source. */
    private static final double SPREAD_OF_DISTANCE = 0.45;

    private static final double LEAST_KM_PER_DAY = 6;
    private static final double MOST_KM_PER_DAY = 160;

    static Driver any(RandomGenerator random) {
        double temper = 0.16 * random.nextGaussian();
        return new Driver(
                0.40 * Math.exp(temper + 0.10 * random.nextGaussian()),
                0.45 * Math.exp(temper + 0.10 * random.nextGaussian()),
                0.55 * Math.exp(temper + 0.10 * random.nextGaussian()),
                Math.clamp(
                        MEDIAN_KM_PER_DAY * Math.exp(SPREAD_OF_DISTANCE * random.nextGaussian()),
                        LEAST_KM_PER_DAY,
                        MOST_KM_PER_DAY));
    }
}
