package cornerbook.app.calibration.fleet;

import java.util.random.RandomGenerator;

/** Where a car lives: how its roads bite, how cold it gets, how much salt there is. */
final class Place {
    private static final double SUMMER_TO_WINTER_C = 13;
    private static final int WARMEST_DAY = 202;
    /** Rubber scrubs off faster when warm. Common practice, no source. */
    private static final double PER_DEGREE = 0.006;

    private static final double USUAL_C = 8;
    /** Snow and water under the tyre spare it; grit does not. Common practice, no source. */
    private static final double WET_WINTER = 0.93;

    private static final int LAST_DAY_OF_MARCH = 90;
    private static final int FIRST_DAY_OF_NOVEMBER = 305;
    private static final int DAYS = 366;

    private final double saltShare;
    private final double[] biteOnDay = new double[DAYS + 1];

    private Place(double roughness, double meanC, double saltShare) {
        this.saltShare = saltShare;
        for (int day = 1; day <= DAYS; day++) {
            double warm = Math.cos(2 * Math.PI * (day - WARMEST_DAY) / DAYS);
            double temperatureC = meanC + SUMMER_TO_WINTER_C * warm;
            biteOnDay[day] =
                    roughness * Math.exp(PER_DEGREE * (temperatureC - USUAL_C)) * (isWinter(day) ? WET_WINTER : 1);
        }
    }

    static Place any(RandomGenerator random) {
        double roughness = Math.exp(0.12 * random.nextGaussian());
        double meanC = 6 + 1.5 * random.nextGaussian();
        return new Place(roughness, meanC, 0.7 + 0.3 * random.nextDouble());
    }

    /** How much road and weather wear a tyre on a day of the year, 1 on an ordinary one. */
    double bite(int dayOfYear) {
        return biteOnDay[dayOfYear];
    }

    /** Chance that roads are salted on a day of the year. */
    double salted(int dayOfYear) {
        return isWinter(dayOfYear) ? saltShare : 0;
    }

    private static boolean isWinter(int dayOfYear) {
        return dayOfYear <= LAST_DAY_OF_MARCH || dayOfYear >= FIRST_DAY_OF_NOVEMBER;
    }
}
