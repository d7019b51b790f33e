package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import cornerbook.core.season.DistancePerDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.random.CorrelatedRandomVectorGenerator;
import org.hipparchus.random.GaussianRandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SetOutlookTest {
    private static final DistancePerDay DISTANCE = new DistancePerDay(42, 9);
    private static final double LIMIT_MM = 4.0;

    /** By sampling with Hipparchus' correlated Gaussian generator (4.0.3) from the posterior's own moments. */
    @ParameterizedTest
    @CsvSource({"1, 60", "1, 180", "2, 90", "3, 200", "4, 140"})
    void probabilityEqualsSampling(long seed, double days) {
        var posterior = posterior(seed);
        var placements = placements();
        double ours = posterior.outlook(placements).probabilityHolds(days, DISTANCE, LIMIT_MM);

        double sampled = sample(posterior, placements, days);

        assertThat(ours).isCloseTo(sampled, within(0.003));
    }

    @Test
    void probabilityFallsWithDaysAndWithTheLimit() {
        var outlook = posterior(1).outlook(placements());
        double before = 1;
        for (double days = 0; days < 1400; days += 7) {
            double now = outlook.probabilityHolds(days, DISTANCE, LIMIT_MM);
            assertThat(now).isLessThanOrEqualTo(before + 1e-6);
            assertThat(outlook.probabilityHolds(days, DISTANCE, LIMIT_MM + 0.3)).isLessThanOrEqualTo(now + 1e-6);
            before = now;
        }
        assertThat(before).isLessThan(1e-3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 0.9, 0.97})
    void horizonIsWhereTheProbabilityFallsThroughTheConfidence(double confidence) {
        for (long seed = 1; seed <= 20; seed++) {
            var outlook = posterior(seed).outlook(placements());
            double days =
                    outlook.horizonDays(DISTANCE, LIMIT_MM, confidence, 1461).orElseThrow();
            assertThat(outlook.probabilityHolds(days, DISTANCE, LIMIT_MM)).isCloseTo(confidence, within(0.005));
        }
    }

    @Test
    void aSetBelowTheLimitHasNoDaysLeft() {
        var outlook = posterior(1).outlook(placements());
        assertThat(outlook.horizonDays(DISTANCE, 9, 0.9, 1461)).hasValue(0);
        assertThat(outlook.horizonDays(new DistancePerDay(0, 0), 1.6, 0.9, 1461))
                .isEmpty();
    }

    private static WearPosterior posterior(long seed) {
        var random = new SplittableRandom(seed);
        var readings = new ArrayList<TreadReading>();
        for (int season = 1; season <= 2; season++) {
            for (var corner : Corner.values()) {
                var run = season == 1 ? ran(corner).getFirst() : ran(corner).getLast();
                for (var groove : Spot.values()) {
                    double depthMm = 8 - 0.17 * run.total() + 0.3 * (random.nextDouble() - 0.5);
                    readings.add(new TreadReading(season, corner.ordinal(), groove, run, depthMm));
                }
            }
        }
        return new WearModel(WearParameters.defaults(DriveLayout.ALL))
                .fit(Collections.nCopies(4, NewDepth.stated(8)), readings);
    }

    /** After one season and after two. */
    private static List<CornerDistances> ran(Corner corner) {
        var first = CornerDistances.NONE.plus(1, corner, 6);
        return List.of(first, first.plus(2, corner, 6));
    }

    private static List<Placement> placements() {
        return List.of(Corner.values()).stream()
                .map(corner -> new Placement(corner.ordinal(), ran(corner).getLast(), corner))
                .toList();
    }

    private static double sample(WearPosterior posterior, List<Placement> placements, double days) {
        var generator = new GaussianRandomGenerator(new Well19937c(20_261_101));
        int draws = 400_000;
        var holds = new boolean[draws];
        Arrays.fill(holds, true);
        var distances = new double[draws];
        double relative = DISTANCE.sdKm() / DISTANCE.meanKm();
        double logSd = Math.sqrt(Math.log(1 + relative * relative));
        for (int i = 0; i < draws; i++) {
            double log = logSd * generator.nextNormalizedDouble() - logSd * logSd / 2;
            distances[i] = DISTANCE.meanKm() * Math.exp(log) * days / 1000;
        }
        var gaussian = posterior.gaussian();
        int size = gaussian.means().length;
        var covariance = MatrixUtils.createRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                covariance.setEntry(i, j, (gaussian.covariance(i, j) + gaussian.covariance(j, i)) / 2);
            }
        }
        var vectors = new CorrelatedRandomVectorGenerator(gaussian.means(), covariance, 1e-12, generator);
        double seasonSd = posterior.parameters().of(WearParameter.SEASON_SD);
        var factor = new Factor(posterior);
        for (int i = 0; i < draws; i++) {
            var unknowns = factor.logNormal(vectors.nextVector(), generator);
            double ahead =
                    seasonSd * generator.nextNormalizedDouble() * Math.sqrt(distances[i] * Math.min(distances[i], 7));
            for (var placement : placements) {
                for (var groove : Spot.values()) {
                    var weights = posterior.weights(groove, placement.tyre(), placement.run());
                    double effectiveMm = posterior.stated(placement.tyre()) - ahead;
                    for (int k = 0; k < size; k++) {
                        effectiveMm += weights[k] * unknowns[k];
                    }
                    effectiveMm -= distances[i] * unknowns[posterior.rateAt(groove, placement.corner())];
                    holds[i] &= posterior.scale(placement.tyre()).depth(effectiveMm) >= LIMIT_MM;
                }
            }
        }
        int held = 0;
        for (boolean hold : holds) {
            held += hold ? 1 : 0;
        }
        return (double) held / draws;
    }

    /** Draws the car's factor that goes with a Gaussian draw, and puts the log-normal one of the same rank in its place. */
    private static final class Factor {
        private final WearPosterior posterior;
        private final double mean;
        private final double[] covariances;
        private final double variance;
        private final double logVariance;
        private final double left;

        Factor(WearPosterior posterior) {
            this.posterior = posterior;
            mean = posterior.car().mean(posterior.gaussian());
            covariances = posterior.car().covariances(posterior.gaussian());
            variance = posterior.car().variance(covariances);
            logVariance = Math.log(1 + variance / (mean * mean));
            var rates = posterior.car().ofRates(covariances);
            left = Math.sqrt(variance - rates);
        }

        double[] logNormal(double[] draw, GaussianRandomGenerator generator) {
            double gaussian = posterior.car().mean(new GaussianPosterior(draw, new double[0]))
                    + left * generator.nextNormalizedDouble();
            double rank = (gaussian - mean) / Math.sqrt(variance);
            double factor = mean * Math.exp(Math.sqrt(logVariance) * rank - logVariance / 2);
            var moved = draw.clone();
            for (int i = 0; i < moved.length; i++) {
                moved[i] += covariances[i] / variance * (factor - gaussian);
            }
            return moved;
        }
    }
}
