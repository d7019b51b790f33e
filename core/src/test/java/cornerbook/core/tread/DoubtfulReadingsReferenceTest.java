package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The posterior of a tyre where any reading may be far off, against the mixture itself: each of all 2ⁿ ways in which n readings
 * are sound or far off, weighed by the density that Hipparchus' multivariate normal distribution (org.hipparchus 4.0.3) has of the
 * readings then.
 */
class DoubtfulReadingsReferenceTest {
    private static final double NEW_MM = 8;
    /** Of a standard deviation. */
    private static final double MEAN = 0.12;

    private static final double SPREAD = 0.12;
    private static final double HARDLY = 1e-12;

    /** Nothing off; a groove read a little, far, very far too low; too deep; the whole visit off, which is the gauge's. */
    @ParameterizedTest
    @CsvSource({"0, 0", "-0.4, 0", "-0.6, 0", "-0.8, 0", "-1.5, 0", "1.2, 0", "-0.7, -0.2"})
    void posteriorEqualsTheMixture(double offMm, double visitMm) {
        var parameters = WearParameters.defaults(DriveLayout.ALL).with(WearParameter.SLOWING, 0);
        var model = new WearModel(parameters);
        var newDepths = List.of(NewDepth.stated(NEW_MM));
        var readings = readings(offMm, visitMm);

        var ours = new DoubtfulReadings(model, newDepths, readings, Drivers.ONE).posterior();

        var mixture = new Mixture(model, newDepths, readings);
        for (int unknown = 0; unknown < Spot.values().length; unknown++) {
            double sd = mixture.sd(unknown);
            assertThat(ours.mean(unknown))
                    .as("mean of depth %d", unknown)
                    .isCloseTo(mixture.mean(unknown), within(MEAN * sd));
            assertThat(Math.sqrt(ours.covariance(unknown, unknown)))
                    .as("spread of depth %d", unknown)
                    .isCloseTo(sd, within(SPREAD * sd));
        }
        for (int rate = 3; rate < 3 + RatePrior.RATES; rate++) {
            double sd = mixture.sd(rate);
            assertThat(ours.mean(rate)).as("mean of rate %d", rate).isCloseTo(mixture.mean(rate), within(MEAN * sd));
            assertThat(Math.sqrt(ours.covariance(rate, rate)))
                    .as("spread of rate %d", rate)
                    .isCloseTo(sd, within(SPREAD * sd));
        }
    }

    private static List<TreadReading> readings(double offMm, double visitMm) {
        var readings = new ArrayList<TreadReading>();
        for (int visit = 0; visit < 3; visit++) {
            var run = visit == 0 ? CornerDistances.NONE : CornerDistances.NONE.plus(0, Corner.LF, 7.0 * visit);
            for (var groove : Spot.values()) {
                boolean off = visit == 1 && groove == Spot.OUTER;
                double depthMm = NEW_MM - 1.1 * visit + (off ? offMm : 0) + (visit == 1 ? visitMm : 0);
                readings.add(new TreadReading(visit, 0, groove, run, depthMm));
            }
        }
        return readings;
    }

    /** All ways together. */
    private static final class Mixture {
        private final double[] means;
        private final double[] squares;

        Mixture(WearModel model, List<NewDepth> newDepths, List<TreadReading> readings) {
            int count = readings.size();
            var hardly = new double[count];
            Arrays.fill(hardly, HARDLY);
            var design = new SetDesign(newDepths, readings, hardly, Drivers.ONE, model.parameters());
            var prior = model.gaussian(design);
            means = new double[design.unknowns()];
            squares = new double[design.unknowns()];
            double sum = 0;
            for (int way = 0; way < 1 << count; way++) {
                var counts = new double[count];
                double chance = 1;
                for (int i = 0; i < count; i++) {
                    boolean far = (way >> i & 1) == 1;
                    counts[i] = far ? 1 / (DoubtfulReadings.WIDER * DoubtfulReadings.WIDER) : 1;
                    chance *= far ? DoubtfulReadings.SHARE : 1 - DoubtfulReadings.SHARE;
                }
                if (Integer.bitCount(way) > 4) {
                    continue;
                }
                double weight = chance * density(model, design, prior, readings, counts);
                var given = model.gaussian(new SetDesign(newDepths, readings, counts, Drivers.ONE, model.parameters()));
                sum += weight;
                for (int unknown = 0; unknown < means.length; unknown++) {
                    double mean = given.mean(unknown);
                    means[unknown] += weight * mean;
                    squares[unknown] += weight * (mean * mean + given.covariance(unknown, unknown));
                }
            }
            for (int unknown = 0; unknown < means.length; unknown++) {
                means[unknown] /= sum;
                squares[unknown] /= sum;
            }
        }

        private static double density(
                WearModel model,
                SetDesign design,
                GaussianPosterior prior,
                List<TreadReading> readings,
                double[] counts) {
            int count = readings.size();
            var expected = new double[count];
            var covariance = new double[count][count];
            var read = new double[count];
            double noise = Math.pow(model.parameters().readingSdMm(), 2);
            double offset = Math.pow(model.parameters().of(WearParameter.VISIT_SD), 2);
            for (int i = 0; i < count; i++) {
                var weights = design.weights(readings.get(i));
                expected[i] = NEW_MM + prior.mean(weights);
                read[i] = readings.get(i).depthMm();
                for (int j = 0; j < count; j++) {
                    covariance[i][j] = prior.covariance(weights, design.weights(readings.get(j)))
                            + (i == j ? noise / counts[i] : 0)
                            + (readings.get(i).visit() == readings.get(j).visit() ? offset : 0);
                }
                for (int j = 0; j < i; j++) {
                    covariance[i][j] = covariance[j][i];
                }
            }
            return new MultivariateNormalDistribution(expected, covariance).density(read);
        }

        double mean(int unknown) {
            return means[unknown];
        }

        double sd(int unknown) {
            return Math.sqrt(squares[unknown] - means[unknown] * means[unknown]);
        }
    }
}
