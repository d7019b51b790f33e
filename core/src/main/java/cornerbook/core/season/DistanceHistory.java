package cornerbook.core.season;

import java.util.List;

/**
 * Distance per day in the season to come, from the seasons that the car has run. Each season's average is taken as κ +
 * e, e ~ N(0, τ²), with κ ~ N(κ0, s²); the next season's average is then Gaussian with
 *
 * <pre>
 *   mean = (κ0/s² + Σ x_i/τ²) / (1/s² + n/τ²),   variance = 1/(1/s² + n/τ²) + τ²
 * </pre>
 *
 * (conjugate normal model), κ0, s and τ as a {@link DistancePrior} has them.
 */
public final class DistanceHistory {
    private DistanceHistory() {}

    /**
     * The season to come.
     *
     * @param seasonsKmPerDay average of each past season of this kind; empty when the car is new to the book
     */
    public static DistancePerDay next(List<Double> seasonsKmPerDay, DistancePrior prior) {
        double carVariance = prior.carSdKm() * prior.carSdKm();
        double seasonVariance = prior.seasonSdKm() * prior.seasonSdKm();
        double precision = 1 / carVariance;
        double weighted = prior.meanKm() * precision;
        for (double season : seasonsKmPerDay) {
            precision += 1 / seasonVariance;
            weighted += season / seasonVariance;
        }
        return new DistancePerDay(weighted / precision, Math.sqrt(1 / precision + seasonVariance));
    }
}
