package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.brake.ThicknessWear;
import cornerbook.core.brake.WearPrior;
import cornerbook.core.brake.WearReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.numeric.TruncatedNormal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.random.CorrelatedRandomVectorGenerator;
import org.hipparchus.random.GaussianRandomGenerator;
import org.hipparchus.random.Well19937a;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against integration by Hipparchus (hipparchus-core 4.0.3), and against drawing from the posterior and keeping what wears. */
class TruncatedNormalReferenceTest {
    private static final double TOLERANCE = 1e-7;

    private static final int TYRES = 4;
    private static final int CORNERS = Corner.values().length;
    private static final int DRAWS = 400_000;
    /**
     * What expectation propagation misses of a rate's mean and spread, in standard deviations: measured, 4 % of the mean and 9 %
     * of the spread where a tread was read 0.3 mm deeper than before, all twelve rates being held at once; and sampling error.
     */
    private static final double NEXT_TO_IT = 0.1;

    @ParameterizedTest
    @ValueSource(doubles = {3, 1, 0, -1, -4, -4.99, -5.01, -7.5, -20, -60, -1000})
    void momentsAreThoseOfTheTail(double z) {
        double floor = 0.001;
        double sd = 0.02;
        // Shifted to the floor and scaled to the tail's own length, so that nothing underflows.
        double length = z < -1 ? 1 / -z : 1;
        UnivariateFunction density = x -> Math.exp(-0.5 * x * x * length * length + z * x * length);
        double mass = integral(density);
        double mean = integral(x -> x * density.value(x)) / mass;
        double square = integral(x -> x * x * density.value(x)) / mass;

        var above = TruncatedNormal.above(new Estimate(floor + z * sd, sd), floor);
        double expected = sd * length * mean;
        assertThat(above.mean() - floor).isCloseTo(expected, within(TOLERANCE * expected));
        double spread = sd * length * Math.sqrt(square - mean * mean);
        assertThat(above.sd()).isCloseTo(spread, within(TOLERANCE * spread));
        assertThat(above.mean() - floor).as("no nearer than its spread").isGreaterThan(above.sd() * (1 - TOLERANCE));
    }

    /** Grooves that seem to have grown at one corner, at all, and by much. */
    @ParameterizedTest
    @ValueSource(doubles = {7.6, 8.2})
    void ratesHeldAboveTheFloorEqualSampling(double laterMm) {
        var parameters = WearParameters.defaults(DriveLayout.FRONT);
        var readings = new ArrayList<TreadReading>();
        for (var corner : Corner.values()) {
            readings.add(new TreadReading(0, corner.ordinal(), Spot.INNER, CornerDistances.NONE, 7.9));
            var run = CornerDistances.NONE.plus(0, corner, 9);
            double depthMm = corner == Corner.LF ? laterMm : laterMm - 0.4;
            readings.add(new TreadReading(1, corner.ordinal(), Spot.INNER, run, depthMm));
        }
        var newDepths = Collections.nCopies(TYRES, NewDepth.stated(8));
        var model = new WearModel(parameters);
        var design = new SetDesign(newDepths, readings, Drivers.ONE, parameters);
        var free = model.gaussian(design);
        var held = WearingRates.hold(free, design.firstRate());

        var draws = new CorrelatedRandomVectorGenerator(
                free.means(), covariance(free), 1e-12, new GaussianRandomGenerator(new Well19937a(9)));
        int first = design.firstRate();
        var rates = new ArrayList<StreamingStatistics>();
        for (int c = 0; c < CORNERS; c++) {
            rates.add(new StreamingStatistics());
        }
        for (int n = 0; n < DRAWS; n++) {
            var draw = draws.nextVector();
            if (Arrays.stream(draw, first, first + RatePrior.RATES)
                    .allMatch(rate -> rate >= WearingRates.LEAST_MM_PER_1000_KM)) {
                for (int c = 0; c < CORNERS; c++) {
                    rates.get(c).addValue(draw[first + c]);
                }
            }
        }
        assertThat(rates.getFirst().getN()).isGreaterThan(500);
        for (var corner : Corner.values()) {
            var kept = rates.get(corner.ordinal());
            int place = first + RatePrior.place(Spot.INNER, corner);
            var rate = new Estimate(held.mean(place), Math.sqrt(held.covariance(place, place)));
            assertThat(rate.mean()).isCloseTo(kept.getMean(), within(NEXT_TO_IT * kept.getStandardDeviation()));
            assertThat(rate.sd())
                    .isCloseTo(kept.getStandardDeviation(), within(NEXT_TO_IT * kept.getStandardDeviation()));
            assertThat(rate.mean() - rate.sd()).isPositive();
        }
    }

    @Test
    void aPadThatSeemsToGrowWears() {
        var prior = WearPrior.pad(11);
        var wear = ThicknessWear.of(
                prior, List.of(new WearReading(10, 7), new WearReading(20, 9.6), new WearReading(30, 9.9)));
        assertThat(wear.rate().mean()).isPositive();
        assertThat(wear.thickness(new Estimate(40, 0)).mean())
                .isLessThan(wear.thickness(new Estimate(30, 0)).mean());
        assertThat(wear.whenNew().sd()).isPositive();
    }

    private static RealMatrix covariance(GaussianPosterior posterior) {
        int size = posterior.means().length;
        var covariance = MatrixUtils.createRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                covariance.setEntry(i, j, (posterior.covariance(i, j) + posterior.covariance(j, i)) / 2);
            }
        }
        return covariance;
    }

    private static double integral(UnivariateFunction function) {
        var integrator = new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-12);
        return integrator.integrate(1_000_000, function, 0, 6) + integrator.integrate(1_000_000, function, 6, 45);
    }
}
