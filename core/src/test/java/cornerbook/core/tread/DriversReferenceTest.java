package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.random.RandomDataGenerator;
import org.hipparchus.stat.correlation.Covariance;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cars whose driver changes, against Hipparchus (org.hipparchus:hipparchus-stat 4.0.3): the moments by its draws, the posterior
 * by its generalized least squares, in which body, drivers, corners and grooves are unknowns of their own.
 */
class DriversReferenceTest {
    private static final double RELATIVE = 1e-9;
    private static final int DRAWS = 400_000;
    /** Of a driver's variance: so much do covariances of that many draws scatter, three times over. */
    private static final double SCATTER = 0.01;

    private static final int TYRES = 4;
    private static final int GROOVES = Spot.values().length;
    private static final int RATES = GROOVES * TYRES;

    /** Two changes: three drivers, and two seasons in which two of them drove, each for a part of which nothing is known. */
    @Test
    void momentsEqualDraws() {
        var drivers = new Drivers(List.of(2, 5));
        int earlier = drivers.earlier();
        var random = new RandomDataGenerator(7);
        var drawn = new double[DRAWS][earlier + 1];
        for (var draw : drawn) {
            double first = random.nextNormal(0, 1);
            double second = random.nextNormal(0, 1);
            double now = random.nextNormal(0, 1);
            double ofFirst = random.nextUniform(0, 1);
            double ofSecond = random.nextUniform(0, 1);
            draw[0] = first - now;
            draw[1] = ofFirst * first + (1 - ofFirst) * second - now;
            draw[2] = second - now;
            draw[3] = ofSecond * second + (1 - ofSecond) * now - now;
            draw[earlier] = now;
        }
        var expected = new Covariance(drawn).getCovarianceMatrix();
        for (int place = 0; place < earlier; place++) {
            assertThat(drivers.withFactor(place)).isCloseTo(expected.getEntry(place, earlier), within(SCATTER));
            for (int other = 0; other < earlier; other++) {
                assertThat(drivers.covariance(place, other))
                        .isCloseTo(expected.getEntry(place, other), within(SCATTER));
            }
        }
    }

    @Test
    void aSeasonIsOfWhoDroveInIt() {
        var drivers = new Drivers(List.of(2, 5));

        assertThat(List.of(1, 2, 3, 4, 5, 6).stream().map(drivers::of).toList()).containsExactly(0, 1, 2, 2, 3, 4);
        assertThat(Drivers.ONE.of(3)).isEqualTo(Drivers.ONE.earlier()).isZero();
    }

    /** Told in the third season, and at the visit of today, after which nothing was read. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void posteriorEqualsGeneralizedLeastSquares(long seed) {
        var random = new SplittableRandom(seed);
        var parameters =
                WearParameters.defaults(DriveLayout.values()[random.nextInt(3)]).with(WearParameter.SLOWING, 1e-12);
        for (var drivers : List.of(new Drivers(List.of(3)), new Drivers(List.of(3, 7)))) {
            var readings = sixSeasons(random);
            var design = new SetDesign(Collections.nCopies(TYRES, NewDepth.stated(8)), readings, drivers, parameters);

            var gaussian = new WearModel(parameters).gaussian(design);

            var expected =
                    new LeastSquares(parameters, readings, drivers.changes().size());
            for (int rate = 0; rate < RATES; rate++) {
                int unknown = design.firstRate() + rate;
                var weights = expected.ofRate(rate);
                assertThat(gaussian.mean(unknown))
                        .isCloseTo(expected.mean(weights) + expected.usual(rate), within(RELATIVE));
                assertThat(gaussian.covariance(unknown, unknown))
                        .isCloseTo(expected.variance(weights), within(RELATIVE));
            }
            for (int depth = 0; depth < RATES; depth++) {
                assertThat(gaussian.mean(depth)).isCloseTo(expected.mean(expected.unit(depth)), within(RELATIVE));
            }
        }
    }

    /**
     * A car of which all is known that one driver can show, which wears twice as fast as is usual: another driver is expected
     * to wear half as much beside what is usual, and to be sure of it by what conditioning two normal numbers leaves (closed form).
     */
    @Test
    void whoComesIsExpectedHalfwayBetweenTheCarAndWhatIsUsual() {
        var parameters = WearParameters.defaults(DriveLayout.ALL).with(WearParameter.SLOWING, 1e-12);
        for (var parameter : List.of(
                WearParameter.READING_SD,
                WearParameter.VISIT_SD,
                WearParameter.NEW_DEPTH_SD,
                WearParameter.CORNER_SPREAD,
                WearParameter.SEASON_SD)) {
            parameters = parameters.with(parameter, 1e-3);
        }
        double usual = parameters.rate(Axle.FRONT);
        var readings = new ArrayList<TreadReading>();
        for (var corner : Corner.values()) {
            var run = CornerDistances.NONE.plus(1, corner, 15);
            for (var groove : Spot.values()) {
                readings.add(new TreadReading(
                        1, corner.ordinal(), groove, run, 8 - 2 * parameters.rate(corner.axle()) * 15));
            }
        }
        var drivers = new Drivers(List.of(2));
        var design = new SetDesign(Collections.nCopies(TYRES, NewDepth.stated(8)), readings, drivers, parameters);

        var model = new WearModel(parameters);
        var gaussian = model.gaussian(design);
        var car = new CarFactor(model.rates(design), design.firstRate());

        double known = parameters.vehicleSpread() * parameters.vehicleSpread();
        assertThat(gaussian.mean(design.firstRate())).isCloseTo(1.5 * usual, within(0.01 * usual));
        assertThat(car.mean(gaussian)).isCloseTo(1.5, within(0.01));
        assertThat(car.variance(car.covariances(gaussian))).isCloseTo(known * (1 - 0.25), within(0.01 * known));
    }

    private static List<TreadReading> sixSeasons(SplittableRandom random) {
        var readings = new ArrayList<TreadReading>();
        var corners = new ArrayList<>(List.of(Corner.values()));
        var run = new ArrayList<>(Collections.nCopies(TYRES, CornerDistances.NONE));
        for (int season = 1; season <= 6; season++) {
            for (int t = 0; t < TYRES; t++) {
                run.set(t, run.get(t).plus(season, corners.get(t), 3 + 5 * random.nextDouble()));
                for (var groove : Spot.values()) {
                    double depthMm = 8 - 0.13 * run.get(t).total() + 0.15 * random.nextDouble();
                    readings.add(new TreadReading(season, t, groove, run.get(t), depthMm));
                }
            }
            Collections.rotate(corners, 1 + random.nextInt(3));
        }
        return readings;
    }

    /**
     * Reading = depth − Σ a m_c (1 + body + driver + corner + groove) − seasons + offset, each an unknown with its own variance;
     * of drivers and of seasons of two the covariances are written out.
     */
    private static final class LeastSquares {
        private static final double[][] ONE_CHANGE = {{1, 0.5, 0}, {0.5, 2.0 / 3, 0.5}, {0, 0.5, 1}};
        private static final double[][] TWO_CHANGES = {
            {1, 0.5, 0, 0, 0},
            {0.5, 2.0 / 3, 0.5, 0.25, 0},
            {0, 0.5, 1, 0.5, 0},
            {0, 0.25, 0.5, 2.0 / 3, 0.5},
            {0, 0, 0, 0.5, 1}
        };
        private static final int BODY = RATES;
        private static final int CORNER = BODY + 1;
        private static final int GROOVE = CORNER + TYRES;
        private static final int DRIVER = GROOVE + RATES;

        private final WearParameters parameters;
        private final int drivers;
        private final int unknowns;
        private final double[] means;
        private final double[][] covariances;

        LeastSquares(WearParameters parameters, List<TreadReading> readings, int changes) {
            this.parameters = parameters;
            var ofDrivers = changes == 1 ? ONE_CHANGE : TWO_CHANGES;
            drivers = ofDrivers.length;
            int season = DRIVER + drivers;
            int visit = season + 7;
            unknowns = visit + 7;
            int rows = readings.size() + unknowns;
            var observed = new double[rows];
            var design = new double[rows][unknowns];
            var noise = MatrixUtils.createRealMatrix(rows, rows);
            for (int i = 0; i < readings.size(); i++) {
                var reading = readings.get(i);
                design[i][reading.groove().ordinal() * TYRES + reading.tyre()] = 1;
                design[i][visit + reading.visit()] = 1;
                observed[i] = reading.depthMm() - 8;
                for (var leg : reading.run().legs()) {
                    double usual = usual(leg.corner().ordinal()) * leg.thousandKm();
                    observed[i] += usual;
                    // Of the third season both drivers have a part; of today's change no season is known.
                    int driver = leg.season() < 3 ? 0 : leg.season() == 3 ? 1 : 2;
                    design[i][BODY] -= usual;
                    design[i][CORNER + leg.corner().ordinal()] -= usual;
                    design[i][
                            GROOVE
                                    + reading.groove().ordinal() * TYRES
                                    + leg.corner().ordinal()] -= usual;
                    design[i][DRIVER + driver] -= usual;
                    design[i][season + leg.season()] -=
                            parameters.share(leg.corner().axle()) * leg.thousandKm();
                }
                noise.setEntry(i, i, square(parameters.readingSdMm()));
            }
            double car = square(parameters.vehicleSpread());
            for (int i = 0; i < unknowns; i++) {
                int row = readings.size() + i;
                design[row][i] = 1;
                noise.setEntry(
                        row,
                        row,
                        i == BODY
                                ? car / 2
                                : i < GROOVE
                                        ? square(parameters.of(WearParameter.CORNER_SPREAD))
                                        : i < DRIVER
                                                ? square(parameters.of(WearParameter.GROOVE_SPREAD))
                                                : i < visit
                                                        ? square(parameters.of(WearParameter.SEASON_SD))
                                                        : square(parameters.of(WearParameter.VISIT_SD)));
            }
            for (int i = 0; i < RATES; i++) {
                for (int j = 0; j < RATES; j++) {
                    double half = square(parameters.newDepthSdMm()) / 2;
                    noise.setEntry(
                            readings.size() + i,
                            readings.size() + j,
                            (i % TYRES == j % TYRES ? half : 0) + (i == j ? half : 0));
                }
            }
            for (int i = 0; i < drivers; i++) {
                for (int j = 0; j < drivers; j++) {
                    noise.setEntry(
                            readings.size() + DRIVER + i, readings.size() + DRIVER + j, ofDrivers[i][j] * car / 2);
                }
            }
            var regression = new GLSMultipleLinearRegression();
            regression.setNoIntercept(true);
            regression.newSampleData(observed, design, noise.getData());
            means = regression.estimateRegressionParameters();
            covariances = regression.estimateRegressionParametersVariance();
        }

        double usual(int rate) {
            return parameters.rate(Corner.values()[rate % TYRES].axle());
        }

        double[] unit(int unknown) {
            var weights = new double[unknowns];
            weights[unknown] = 1;
            return weights;
        }

        /** The rate of who drives now, less the usual one. */
        double[] ofRate(int rate) {
            var weights = new double[unknowns];
            for (int unknown : new int[] {BODY, CORNER + rate % TYRES, GROOVE + rate, DRIVER + drivers - 1}) {
                weights[unknown] = usual(rate);
            }
            return weights;
        }

        double mean(double[] weights) {
            return MatrixUtils.createRealVector(weights).dotProduct(MatrixUtils.createRealVector(means));
        }

        double variance(double[] weights) {
            var vector = MatrixUtils.createRealVector(weights);
            return vector.dotProduct(MatrixUtils.createRealMatrix(covariances).operate(vector));
        }

        private static double square(double value) {
            return value * value;
        }
    }
}
