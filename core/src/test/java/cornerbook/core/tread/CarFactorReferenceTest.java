package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.random.CorrelatedRandomVectorGenerator;
import org.hipparchus.random.GaussianRandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The posterior under the log-normal factor against sampling: draws from the Gaussian posterior, each weighed by the
 * densities of Hipparchus' log-normal and normal distributions (org.hipparchus 4.0.3) at its factor.
 */
class CarFactorReferenceTest {
    private static final int DRAWS = 400_000;
    /** Of a standard deviation: so much do the weighted draws scatter. */
    private static final double MEAN = 0.02;

    private static final double SPREAD = 0.03;

    /** New tyres, of which nothing is known but the prior; a slow car after one season, a usual one, a fast one. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.05, 8", "0.17, 3", "0.35, 6"})
    void posteriorEqualsSampling(double rate, double thousandKm) {
        var parameters = WearParameters.defaults(DriveLayout.ALL);
        var newDepths = Collections.nCopies(4, NewDepth.stated(8));
        var readings = thousandKm == 0 ? List.<TreadReading>of() : readings(rate, thousandKm);
        var model = new WearModel(parameters);
        var design = new SetDesign(newDepths, readings, Drivers.ONE, parameters);
        var gaussian = model.gaussian(design);
        var car = new CarFactor(model.rates(design), design.firstRate());

        var ours = car.logNormal(gaussian);

        int size = gaussian.means().length;
        var draws = draws(gaussian);
        var standard = new GaussianRandomGenerator(new Well19937c(4));
        double left = Math.sqrt(car.variance(new double[size]));
        double variance = parameters.vehicleSpread() * parameters.vehicleSpread();
        double logVariance = Math.log(1 + variance);
        var asked = new LogNormalDistribution(-logVariance / 2, Math.sqrt(logVariance));
        var taken = new NormalDistribution(1, parameters.vehicleSpread());
        double sum = 0;
        var means = new double[size];
        var squares = new double[size];
        for (int n = 0; n < DRAWS; n++) {
            var draw = draws.nextVector();
            double factor =
                    car.mean(new GaussianPosterior(draw, new double[0])) + left * standard.nextNormalizedDouble();
            double weight = factor > 0 ? asked.density(factor) / taken.density(factor) : 0;
            sum += weight;
            for (int i = 0; i < size; i++) {
                means[i] += weight * draw[i];
                squares[i] += weight * draw[i] * draw[i];
            }
        }
        for (int i = 0; i < size; i++) {
            double mean = means[i] / sum;
            double sd = Math.sqrt(squares[i] / sum - mean * mean);
            assertThat(ours.mean(i)).as("mean of unknown %d", i).isCloseTo(mean, within(MEAN * sd));
            assertThat(Math.sqrt(ours.covariance(i, i))).as("spread of %d", i).isCloseTo(sd, within(SPREAD * sd));
        }
    }

    private static List<TreadReading> readings(double rate, double thousandKm) {
        var readings = new ArrayList<TreadReading>();
        for (var corner : Corner.values()) {
            var run = CornerDistances.NONE.plus(0, corner, thousandKm);
            for (var groove : Spot.values()) {
                readings.add(new TreadReading(0, corner.ordinal(), groove, run, 8 - rate * thousandKm));
            }
        }
        return readings;
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
