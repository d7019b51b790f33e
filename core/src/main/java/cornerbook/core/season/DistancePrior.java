package cornerbook.core.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far cars run per day, before this car's own seasons are looked at: the mean over cars, how cars differ, and how the
 * seasons of a car that runs the mean differ. Both differ in proportion to the distance: their logarithms are normal.
 *
 * @param carSdKm standard deviation between cars
 * @param seasonSdKm standard deviation between seasons of one car
 * @param cars how many cars it was learned from; 0 for the default
 */
public record DistancePrior(double meanKm, double carSdKm, double seasonSdKm, int cars) {
    /** Until the book has learned better: common practice, no source. */
    public static final DistancePrior DEFAULT = new DistancePrior(40, 15, 8, 0);

    private static final int MOST_ROUNDS = 2000;
    private static final double PRECISE = 1e-10;
    /** A season in which the car hardly ran counts as one of this: it says little of the next. Common practice, no source. */
    private static final double LEAST_KM = 5;

    public DistancePrior {
        if (!(meanKm >= 0 && meanKm <= 2000 && carSdKm > 0 && seasonSdKm > 0 && cars >= 0)) {
            throw new IllegalArgumentException(
                    "distance prior is %s km per day, %s, %s, of %s cars, expected 0 to 2000, spreads above 0"
                            .formatted(meanKm, carSdKm, seasonSdKm, cars));
        }
    }

    /** Variance of the logarithm between cars. */
    double logCarVariance() {
        return logVariance(carSdKm, meanKm);
    }

    /** Variance of the logarithm between seasons of one car. */
    double logSeasonVariance() {
        return logVariance(seasonSdKm, meanKm);
    }

    /** Mean of the logarithm over cars and seasons, such that {@link #meanKm} is the mean of km. */
    double logMean() {
        return Math.log(meanKm) - (logCarVariance() + logSeasonVariance()) / 2;
    }

    /** Of a season's average. */
    static double logarithm(double kmPerDay) {
        return Math.log(Math.max(LEAST_KM, kmPerDay));
    }

    private static double logVariance(double sdKm, double meanKm) {
        double relative = sdKm / meanKm;
        return Math.log1p(relative * relative);
    }

    /**
     * Learns from the book: the model of {@link DistanceHistory} by maximum likelihood, with the default counted as so
     * many further cars, by the EM algorithm (Dempster, Laird and Rubin 1977, J. R. Statist. Soc. B 39:1). Checked
     * against R's lme4.
     *
     * @param seasonsByCar average km per day of each season, car by car
     * @param defaultAsCars weight of the default, 0 or more
     */
    public static DistancePrior learn(List<List<Double>> seasonsByCar, double defaultAsCars) {
        return learn(seasonsByCar, DEFAULT, defaultAsCars);
    }

    /**
     * The same from what is known in place of the default.
     *
     * @param before what is known
     * @param beforeAsCars its weight, 0 or more
     */
    public static DistancePrior learn(List<List<Double>> seasonsByCar, DistancePrior before, double beforeAsCars) {
        var cars = new ArrayList<double[]>();
        for (var seasons : seasonsByCar) {
            if (!seasons.isEmpty()) {
                cars.add(seasons.stream().mapToDouble(DistancePrior::logarithm).toArray());
            }
        }
        if (cars.isEmpty()) {
            return before;
        }
        int seasons = cars.stream().mapToInt(car -> car.length).sum();
        double mean = before.logMean();
        double carVariance = before.logCarVariance();
        double seasonVariance = before.logSeasonVariance();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double means = 0;
            double squares = 0;
            double residuals = 0;
            for (var car : cars) {
                double variance = 1 / (1 / carVariance + car.length / seasonVariance);
                double own = variance * (mean / carVariance + Arrays.stream(car).sum() / seasonVariance);
                means += own;
                squares += variance + own * own;
                for (double season : car) {
                    residuals += variance + (season - own) * (season - own);
                }
            }
            double all = beforeAsCars + cars.size();
            double nextMean = (beforeAsCars * before.logMean() + means) / all;
            double ofCars = squares - 2 * nextMean * means + cars.size() * nextMean * nextMean;
            double off = before.logMean() - nextMean;
            double ofDefault = beforeAsCars * (before.logCarVariance() + off * off);
            double nextCarVariance = (ofCars + ofDefault) / all;
            double nextSeasonVariance =
                    (residuals + beforeAsCars * before.logSeasonVariance()) / (beforeAsCars + seasons);
            boolean settled = Math.abs(nextMean - mean) < PRECISE
                    && Math.abs(nextCarVariance - carVariance) < PRECISE * carVariance
                    && Math.abs(nextSeasonVariance - seasonVariance) < PRECISE * seasonVariance;
            mean = nextMean;
            carVariance = nextCarVariance;
            seasonVariance = nextSeasonVariance;
            if (settled) {
                break;
            }
        }
        double meanKm = Math.exp(mean + (carVariance + seasonVariance) / 2);
        return new DistancePrior(
                meanKm,
                meanKm * Math.sqrt(Math.expm1(carVariance)),
                meanKm * Math.sqrt(Math.expm1(seasonVariance)),
                cars.size());
    }
}
