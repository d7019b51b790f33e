package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.random.CorrelatedRandomVectorGenerator;
import org.hipparchus.random.GaussianRandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against importance sampling: with the errors on the gauge's scale, the slope of a set's likelihood is the mean over the
 * unknowns, drawn by Hipparchus and weighed by its multivariate normal density, of the slope of the readings' density.
 */
class SlowingSlopeReferenceTest {
    private static final double NEW_MM = 8;
    private static final double STEP = 1e-4;
    private static final int DRAWS = 40_000;

    /** Errors do not stretch with the scale in the one and do in the other: the more γ, the farther they are apart. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0.03", "0, 0.06, 0.03", "0, -0.06, 0.03", "0.2, 0, 0.2", "0.2, 0.06, 0.2", "-0.2, -0.06, 0.2"})
    void isTheSlopeOfTheGaugesLikelihood(double slowing, double bent, double share) {
        var parameters = WearParameters.defaults(DriveLayout.FRONT).with(WearParameter.SLOWING, slowing);
        var readings = readings(bent);
        var history = new WearHistory(
                "invented", DriveLayout.FRONT, SeasonKind.SUMMER, null, List.of(NewDepth.stated(NEW_MM)), readings);
        var sampled = new Sampled(parameters, readings);
        assertThat(new SlowingSlope(parameters).of(history))
                .isCloseTo(sampled.slope, within(share * Math.max(5, Math.abs(sampled.slope))));
    }

    /** A tyre read new and after each of four seasons, with errors that repeat, and more or less worn at the end. */
    private static List<TreadReading> readings(double bentMm) {
        var errorsMm = new double[] {0.1, -0.1, 0.05, -0.15, 0.1, 0, 0.05, -0.05, 0.1, -0.1, 0, 0.1, -0.1, 0.05, 0};
        var readings = new ArrayList<TreadReading>();
        var run = CornerDistances.NONE;
        for (int visit = 0; visit < 5; visit++) {
            for (var groove : Spot.values()) {
                double depthMm = NEW_MM - 1.2 * visit + bentMm * visit * visit;
                readings.add(new TreadReading(
                        visit, 0, groove, run, depthMm + errorsMm[visit * Spot.values().length + groove.ordinal()]));
            }
            run = run.plus(visit, Corner.LF, 7);
        }
        return readings;
    }

    private static final class Sampled {
        private final MultivariateNormalDistribution errors;
        private final SetDesign design;
        private final List<TreadReading> readings;
        private final double slope;

        private Sampled(WearParameters parameters, List<TreadReading> readings) {
            errors = errors(parameters);
            this.readings = readings;
            design = new SetDesign(List.of(NewDepth.stated(NEW_MM)), readings, Drivers.ONE, parameters);
            var posterior = new WearModel(parameters).gaussian(design);
            var draws = draws(posterior);
            double slowing = parameters.of(WearParameter.SLOWING);
            double sum = 0;
            double slopes = 0;
            for (int draw = 0; draw < DRAWS; draw++) {
                var unknowns = draws.nextVector();
                double log = logOfGauge(unknowns, slowing);
                double weight = Math.exp(log - logOfEffective(unknowns, slowing));
                sum += weight;
                slopes += weight
                        * (logOfGauge(unknowns, slowing + STEP) - logOfGauge(unknowns, slowing - STEP))
                        / (2 * STEP);
            }
            slope = slopes / sum;
        }

        private double logOfGauge(double[] unknowns, double slowing) {
            var scale = new TreadScale(NEW_MM, slowing);
            return log(visit -> offMm(visit, unknowns, (effective, read) -> read - scale.depth(effective)));
        }

        private double logOfEffective(double[] unknowns, double slowing) {
            var scale = new TreadScale(NEW_MM, slowing);
            return log(visit -> offMm(visit, unknowns, (effective, read) -> scale.effective(read) - effective));
        }

        private interface Off {
            double[] of(int visit);
        }

        private interface Compared {
            double of(double effectiveMm, double readMm);
        }

        private double[] offMm(int visit, double[] unknowns, Compared compared) {
            return readings.stream()
                    .filter(reading -> reading.visit() == visit)
                    .mapToDouble(reading -> {
                        var weights = new double[unknowns.length];
                        design.weigh(reading.groove(), 0, reading.run(), weights);
                        double effective = NEW_MM;
                        for (int i = 0; i < weights.length; i++) {
                            effective += weights[i] * unknowns[i];
                        }
                        return compared.of(effective, reading.depthMm());
                    })
                    .toArray();
        }

        private double log(Off off) {
            double log = 0;
            for (int visit = 0; visit < 5; visit++) {
                log += Math.log(errors.density(off.of(visit)));
            }
            return log;
        }

        private static MultivariateNormalDistribution errors(WearParameters parameters) {
            double own = Math.pow(parameters.readingSdMm(), 2);
            double shared = Math.pow(parameters.of(WearParameter.VISIT_SD), 2);
            var covariance = new double[Spot.values().length][Spot.values().length];
            for (int i = 0; i < covariance.length; i++) {
                for (int j = 0; j < covariance.length; j++) {
                    covariance[i][j] = shared + (i == j ? own : 0);
                }
            }
            return new MultivariateNormalDistribution(new double[covariance.length], covariance);
        }

        private static CorrelatedRandomVectorGenerator draws(GaussianPosterior gaussian) {
            int size = gaussian.means().length;
            var covariance = MatrixUtils.createRealMatrix(size, size);
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    covariance.setEntry(i, j, (gaussian.covariance(i, j) + gaussian.covariance(j, i)) / 2);
                }
            }
            return new CorrelatedRandomVectorGenerator(
                    gaussian.means(), covariance, 1e-12, new GaussianRandomGenerator(new Well19937c(3)));
        }
    }
}
