package cornerbook.core.season;

/**
 * Distance that the car covers in a day, km, averaged over the time looked at: mean and standard deviation. Its logarithm is
 * normal: no car runs less than nothing, and some run twice as far as expected.
 */
public record DistancePerDay(double meanKm, double sdKm) {
    private static final double MOST_MEAN_KM = 2000;
    private static final double MOST_SD_KM = 1000;

    public DistancePerDay {
        if (!(meanKm >= 0 && meanKm <= MOST_MEAN_KM && sdKm >= 0 && sdKm <= MOST_SD_KM)) {
            throw new IllegalArgumentException(
                    "distance per day is %s ± %s km, expected 0 to 2000 ± 0 to 1000 km".formatted(meanKm, sdKm));
        }
    }

    /** Of which the logarithm has this mean and variance. */
    static DistancePerDay logNormal(double logMean, double logVariance) {
        double meanKm = Math.min(MOST_MEAN_KM, Math.exp(logMean + logVariance / 2));
        return new DistancePerDay(meanKm, Math.min(MOST_SD_KM, meanKm * Math.sqrt(Math.expm1(logVariance))));
    }

    /** Variance of the logarithm; of a distance above 0. */
    public double logVariance() {
        double relative = sdKm / meanKm;
        return Math.log1p(relative * relative);
    }

    /** Mean of the logarithm of km; of a distance above 0. */
    public double logMean() {
        return Math.log(meanKm) - logVariance() / 2;
    }
}
