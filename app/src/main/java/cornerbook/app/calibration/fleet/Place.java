package cornerbook.app.calibration.fleet;

import java.time.LocalDate;
import java.util.random.RandomGenerator;

/**
 * Where a car lives: how its roads bite, how cold it gets, how much salt there is.
 *
 * @param roughness of the usual road against the usual place
 * @param meanC of the year
 * @param saltShare of winter days on which roads are salted
 */
record Place(double roughness, double meanC, double saltShare) {
    private static final double SUMMER_TO_WINTER_C = 13;
    private static final int WARMEST_DAY = 202;
    /** Rubber scrubs off faster when warm. Common practice, no source. */
    private static final double PER_DEGREE = 0.006;

    private static final double USUAL_C = 8;
    /** Snow and water under the tyre spare it; grit does not. Common practice, no source. */
    private static final double WET_WINTER = 0.93;

    static Place any(RandomGenerator random) {
        return new Place(
                Math.exp(0.12 * random.nextGaussian()),
                6 + 1.5 * random.nextGaussian(),
                0.7 + 0.3 * random.nextDouble());
    }

    /** How much a day's road and weather wear a tyre, 1 on an ordinary day. */
    double bite(LocalDate day) {
        double warm = Math.cos(2 * Math.PI * (day.getDayOfYear() - WARMEST_DAY) / 365.25);
        double temperatureC = meanC + SUMMER_TO_WINTER_C * warm;
        return roughness * Math.exp(PER_DEGREE * (temperatureC - USUAL_C)) * (isWinter(day) ? WET_WINTER : 1);
    }

    /** Chance that roads are salted on a day. */
    double salted(LocalDate day) {
        return isWinter(day) ? saltShare : 0;
    }

    private static boolean isWinter(LocalDate day) {
        int month = day.getMonthValue();
        return month <= 3 || month >= 11;
    }
}
