package cornerbook.core.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** Slope, its standard error and the line against the regression of a general library (Hipparchus). */
class HealthTrendReferenceTest {
    private static final LocalDate FIRST = LocalDate.of(2022, 4, 10);

    @Test
    void slopeErrorAndLineAreThoseOfALibrary() {
        var random = new SplittableRandom(50342);
        for (int i = 0; i < 200; i++) {
            var regression = new SimpleRegression();
            var points = new ArrayList<HealthTrend.Point>();
            var day = FIRST;
            for (int visit = 0; visit < random.nextInt(3, 9); visit++) {
                double share = 1 - 0.05 * visit + random.nextDouble(-0.05, 0.05);
                points.add(new HealthTrend.Point(day, share));
                regression.addData(ChronoUnit.DAYS.between(FIRST, day) / 365.25, share);
                day = day.plusDays(random.nextInt(100, 250));
            }
            var trend = HealthTrend.of(points, 0.7).orElseThrow();
            assertThat(trend.sharePerYear()).isCloseTo(regression.getSlope(), within(1e-9));
            assertThat(trend.errorPerYear()).isCloseTo(regression.getSlopeStdErr(), within(1e-9));
            double lastYears = ChronoUnit.DAYS.between(FIRST, points.getLast().day()) / 365.25;
            assertThat(trend.share()).isCloseTo(regression.predict(lastYears), within(1e-9));
        }
    }

    /** The variance of the line on a day is (1, t) V (1, t)ᵀ with V of the library's least squares for several variables. */
    @Test
    void theBandIsTwoStandardErrorsOfTheLineByALibrary() {
        var random = new SplittableRandom(61);
        for (int i = 0; i < 50; i++) {
            int visits = random.nextInt(4, 9);
            var shares = new double[visits];
            var years = new double[visits][1];
            var points = new ArrayList<HealthTrend.Point>();
            var day = FIRST;
            for (int visit = 0; visit < visits; visit++) {
                shares[visit] = 1 - 0.05 * visit + random.nextDouble(-0.05, 0.05);
                years[visit][0] = ChronoUnit.DAYS.between(FIRST, day) / 365.25;
                points.add(new HealthTrend.Point(day, shares[visit]));
                day = day.plusDays(random.nextInt(100, 250));
            }
            var library = new OLSMultipleLinearRegression();
            library.newSampleData(shares, years);
            var variance = library.estimateRegressionParametersVariance();
            double noise = library.estimateErrorVariance();
            var trend = HealthTrend.of(points, 0.7).orElseThrow();
            for (var at : List.of(FIRST, day, day.plusDays(400))) {
                double t = ChronoUnit.DAYS.between(FIRST, at) / 365.25;
                double expected =
                        2 * Math.sqrt(noise * (variance[0][0] + 2 * t * variance[0][1] + t * t * variance[1][1]));
                assertThat(trend.bandOn(at)).isCloseTo(expected, within(1e-9));
                var parameters = library.estimateRegressionParameters();
                assertThat(trend.shareOn(at)).isCloseTo(parameters[0] + parameters[1] * t, within(1e-9));
            }
        }
    }

    /** 0.96, 0.90, 0.84 a year apart fall by 0.06 a year: 0.70 is reached 2⅓ years, 852 days, after the last. */
    @Test
    void aStraightFallReachesItsEndOnItsDay() {
        var points = List.of(
                new HealthTrend.Point(LocalDate.of(2023, 1, 1), 0.96),
                new HealthTrend.Point(LocalDate.of(2024, 1, 1), 0.90),
                new HealthTrend.Point(LocalDate.of(2025, 1, 1), 0.84));
        assertThat(HealthTrend.of(points, 0.7).orElseThrow().reaches())
                .isBetween(LocalDate.of(2027, 4, 30), LocalDate.of(2027, 5, 5));
    }

    @Test
    void aFlatOrShortSeriesHasNoDay() {
        var flat = List.of(
                new HealthTrend.Point(LocalDate.of(2023, 1, 1), 0.90),
                new HealthTrend.Point(LocalDate.of(2024, 1, 1), 0.94),
                new HealthTrend.Point(LocalDate.of(2025, 1, 1), 0.89));
        assertThat(HealthTrend.of(flat, 0.7).orElseThrow().reaches()).isNull();
        assertThat(HealthTrend.of(flat.subList(0, 2), 0.7)).isEmpty();
    }
}
