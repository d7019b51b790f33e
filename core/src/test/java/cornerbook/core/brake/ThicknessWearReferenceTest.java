package cornerbook.core.brake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.season.DistancePerDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ThicknessWearReferenceTest {
    /** Generalized least squares of Hipparchus (hipparchus-stat 4.0.3) with the prior as two pseudo-observations. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void posteriorEqualsGeneralizedLeastSquares(long seed) {
        var random = new SplittableRandom(seed);
        var prior = seed % 2 == 0 ? WearPrior.pad(11) : WearPrior.disc(28);
        var readings = new ArrayList<WearReading>();
        for (int i = 0; i < 1 + random.nextInt(8); i++) {
            double run = 8 * i + 5 * random.nextDouble();
            readings.add(new WearReading(
                    run, prior.newMm() - 1.3 * prior.rateMmPer1000Km() * run + 0.2 * random.nextDouble()));
        }

        int rows = readings.size() + 2;
        var observed = new double[rows];
        var design = new double[rows][2];
        var noise = new double[rows][rows];
        for (int i = 0; i < readings.size(); i++) {
            observed[i] = readings.get(i).thicknessMm();
            design[i] = new double[] {1, -readings.get(i).run1000Km()};
            noise[i][i] = Math.pow(prior.readingSdMm(), 2);
        }
        observed[rows - 2] = prior.newMm();
        design[rows - 2] = new double[] {1, 0};
        noise[rows - 2][rows - 2] = Math.pow(prior.newSdMm(), 2);
        observed[rows - 1] = prior.rateMmPer1000Km();
        design[rows - 1] = new double[] {0, 1};
        noise[rows - 1][rows - 1] = Math.pow(prior.rateSdMmPer1000Km(), 2);
        var regression = new GLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(observed, design, noise);
        var mean = regression.estimateRegressionParameters();
        var covariance = regression.estimateRegressionParametersVariance();

        var wear = ThicknessWear.of(prior, readings);

        same(wear.whenNew().mean(), mean[0]);
        same(wear.rate().mean(), mean[1]);
        same(wear.whenNew().sd(), Math.sqrt(covariance[0][0]));
        same(wear.rate().sd(), Math.sqrt(covariance[1][1]));
        assertThat(wear.covariance())
                .isCloseTo(covariance[0][1], within(1e-9 * Math.sqrt(covariance[0][0] * covariance[1][1])));

        // By how much the mean of least squares follows a usual rate that is a thousandth higher.
        observed[rows - 1] += 0.001;
        regression.newSampleData(observed, design, noise);
        double pull = (regression.estimateRegressionParameters()[1] - mean[1]) / 0.001;
        assertThat(wear.ownShareOfRate()).isBetween(0.0, 1.0).isCloseTo(1 - pull, within(1e-9));
    }

    /**
     * The first reading of a part of unknown age tells nothing of its rate. Two of ± 0.25 mm know it to a variance of 2 ·
     * 0.0625 mm² over the square of the distance between them: 0.005 after 5000 km, 0.00005 after 50 000, against 0.0036.
     */
    @Test
    void ownShareGrowsWithTheDistanceThatWasSeen() {
        var prior = WearPrior.pad(11).ofUnknownAge();
        assertThat(ThicknessWear.of(prior, List.of()).ownShareOfRate()).isZero();
        assertThat(ThicknessWear.of(prior, List.of(new WearReading(0, 8.2))).ownShareOfRate())
                .isCloseTo(0, within(1e-12));
        double near = ThicknessWear.of(prior, List.of(new WearReading(0, 8.2), new WearReading(5, 7.9)))
                .ownShareOfRate();
        double far = ThicknessWear.of(prior, List.of(new WearReading(0, 8.2), new WearReading(50, 4.9)))
                .ownShareOfRate();
        assertThat(near).isCloseTo(0.0036 / (0.0036 + 0.005), within(1e-3));
        assertThat(far).isCloseTo(0.0036 / (0.0036 + 0.00005), within(1e-3));
    }

    /** Against sampling of thickness, rate and distance. */
    @Test
    void probabilityOfHoldingEqualsSampling() {
        var wear = ThicknessWear.of(
                WearPrior.pad(11),
                List.of(new WearReading(20, 9.1), new WearReading(35, 7.4), new WearReading(50, 6.0)));
        var distance = new DistancePerDay(45, 9);
        var random = new Random(3);
        double slope = wear.covariance() / (wear.rate().sd() * wear.rate().sd());
        double rest = Math.sqrt(wear.whenNew().sd() * wear.whenNew().sd()
                - slope * slope * wear.rate().sd() * wear.rate().sd());
        for (double days : new double[] {200, 500, 800}) {
            int holds = 0;
            int draws = 200_000;
            for (int i = 0; i < draws; i++) {
                double z = random.nextGaussian();
                double rate = wear.rate().mean() + wear.rate().sd() * z;
                double whenNew = wear.whenNew().mean() + slope * wear.rate().sd() * z + rest * random.nextGaussian();
                double run = 50 + days * (45 + 9 * random.nextGaussian()) / 1000;
                holds += whenNew - rate * run >= 3 ? 1 : 0;
            }
            assertThat(wear.probabilityHolds(50, days, distance, 3)).isCloseTo((double) holds / draws, within(0.01));
        }
    }

    @Test
    void horizonIsWhereTheProbabilityFallsThroughTheConfidence() {
        var wear = ThicknessWear.of(WearPrior.pad(11), List.of(new WearReading(20, 9.1), new WearReading(50, 6.0)));
        var distance = new DistancePerDay(45, 9);
        double days = wear.horizonDays(50, distance, 3, 0.9, 5000).orElseThrow();
        assertThat(wear.probabilityHolds(50, days, distance, 3)).isGreaterThanOrEqualTo(0.9);
        assertThat(wear.probabilityHolds(50, days + 0.5, distance, 3)).isLessThan(0.9);
        assertThat(wear.horizonDays(50, distance, 3, 0.9, 10)).isEmpty();
        assertThat(wear.horizonDays(120, distance, 3, 0.9, 5000)).hasValue(0);
    }

    @Test
    void withoutReadingsThePriorStands() {
        var wear = ThicknessWear.of(WearPrior.pad(11), List.of());
        assertThat(wear.rate().mean()).isCloseTo(0.10, within(1e-12));
        assertThat(wear.rate().sd()).isCloseTo(0.06, within(1e-12));
        assertThat(wear.whenNew().mean()).isCloseTo(11, within(1e-12));
    }

    private static void same(double ours, double expected) {
        assertThat(ours).isCloseTo(expected, within(1e-9 * Math.abs(expected)));
    }
}
