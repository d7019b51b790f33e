package cornerbook.core.season;

import cornerbook.core.numeric.Estimate;
import java.util.List;

/**
 * Distance per day in the season to come, from the seasons that the car has run. Distances are products of many things and
 * never below nothing, so they are taken by their logarithms: each season's average is e^(κ + e), e ~ N(0, τ²), with κ ~
 * N(κ0, s²); the next season's is then log-normal with
 *
 * <pre>
 *   mean of the logarithm = (κ0/s² + Σ log x_i/τ²) / (1/s² + n/τ²),   variance = 1/(1/s² + n/τ²) + τ²
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
        double precision = 1 / prior.logCarVariance();
        double weighted = prior.logMean() * precision;
        for (double season : seasonsKmPerDay) {
            precision += 1 / prior.logSeasonVariance();
            weighted += DistancePrior.logarithm(season) / prior.logSeasonVariance();
        }
        return DistancePerDay.logNormal(weighted / precision, 1 / precision + prior.logSeasonVariance());
    }

    /**
     * How much of the mean of the logarithm comes from the car's own seasons, 0 to 1, the rest from the prior: the variance
     * of κ shrinks from s² to 1/(1/s² + n/τ²), which is {@link Estimate#shareOfData}, (n/τ²) / (1/s² + n/τ²).
     *
     * @param seasons how many the car has run
     */
    public static double ownShare(int seasons, DistancePrior prior) {
        double ofSeasons = seasons / prior.logSeasonVariance();
        return ofSeasons / (1 / prior.logCarVariance() + ofSeasons);
    }
}
