package cornerbook.core.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far cars run per day, before this car's own seasons are looked at: the mean over cars, how cars differ, and how the
 * seasons of one car differ.
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

    public DistancePrior {
        if (!(meanKm >= 0 && meanKm <= 2000 && carSdKm > 0 && seasonSdKm > 0 && cars >= 0)) {
            throw new IllegalArgumentException(
                    "distance prior is %s km per day, %s, %s, of %s cars, expected 0 to 2000, spreads above 0"
                            .formatted(meanKm, carSdKm, seasonSdKm, cars));
        }
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
        var cars = new ArrayList<double[]>();
        for (var seasons : seasonsByCar) {
            if (!seasons.isEmpty()) {
                cars.add(seasons.stream().mapToDouble(Double::doubleValue).toArray());
            }
        }
        if (cars.isEmpty()) {
            return DEFAULT;
        }
        int seasons = cars.stream().mapToInt(car -> car.length).sum();
        double mean = DEFAULT.meanKm;
        double carVariance = DEFAULT.carSdKm * DEFAULT.carSdKm;
        double seasonVariance = DEFAULT.seasonSdKm * DEFAULT.seasonSdKm;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double means = defaultAsCars * DEFAULT.meanKm;
            double squares = 0;
            double residuals = defaultAsCars * DEFAULT.seasonSdKm * DEFAULT.seasonSdKm;
            for (var car : cars) {
                double variance = 1 / (1 / carVariance + car.length / seasonVariance);
                double own = variance * (mean / carVariance + Arrays.stream(car).sum() / seasonVariance);
                means += own;
                squares += variance + own * own;
                for (double season : car) {
                    residuals += variance + (season - own) * (season - own);
                }
            }
            double nextMean = means / (defaultAsCars + cars.size());
            double ofCars = squares
                    - 2 * nextMean * (means - defaultAsCars * DEFAULT.meanKm)
                    + cars.size() * nextMean * nextMean;
            double ofDefault = defaultAsCars
                    * (DEFAULT.carSdKm * DEFAULT.carSdKm + (DEFAULT.meanKm - nextMean) * (DEFAULT.meanKm - nextMean));
            double nextCarVariance = (ofCars + ofDefault) / (defaultAsCars + cars.size());
            double nextSeasonVariance = residuals / (defaultAsCars + seasons);
            boolean settled = Math.abs(nextMean - mean) < PRECISE * mean
                    && Math.abs(nextCarVariance - carVariance) < PRECISE * carVariance
                    && Math.abs(nextSeasonVariance - seasonVariance) < PRECISE * seasonVariance;
            mean = nextMean;
            carVariance = nextCarVariance;
            seasonVariance = nextSeasonVariance;
            if (settled) {
                break;
            }
        }
        return new DistancePrior(mean, Math.sqrt(carVariance), Math.sqrt(seasonVariance), cars.size());
    }
}
