package cornerbook.core.season;

import cornerbook.core.wear.DistancePerDay;
import java.util.List;

/**
 * Distance per day in the season to come, from the seasons that the car has run. Each season's average is taken as κ +
 * e, e ~ N(0, τ²), with κ ~ N(κ0, s²); the next season's average is then Gaussian with
 *
 * <pre>
 *   mean = (κ0/s² + Σ x_i/τ²) / (1/s² + n/τ²),   variance = 1/(1/s² + n/τ²) + τ²
 * </pre>
 *
 * Defaults κ0 = 40, s = 15, τ = 8 km per day: common practice, no source.
 */
public final class DistanceHistory {
    private static final double PRIOR_MEAN_KM = 40;
    private static final double PRIOR_SD_KM = 15;
    private static final double SEASON_SD_KM = 8;

    private DistanceHistory() {}

    /**
     * The season to come.
     *
     * @param seasonsKmPerDay average of each past season of this kind; empty when the car is new to the book
     */
    public static DistancePerDay next(List<Double> seasonsKmPerDay) {
        double precision = 1 / (PRIOR_SD_KM * PRIOR_SD_KM);
        double weighted = PRIOR_MEAN_KM * precision;
        for (double season : seasonsKmPerDay) {
            precision += 1 / (SEASON_SD_KM * SEASON_SD_KM);
            weighted += season / (SEASON_SD_KM * SEASON_SD_KM);
        }
        return new DistancePerDay(weighted / precision, Math.sqrt(1 / precision + SEASON_SD_KM * SEASON_SD_KM));
    }
}
