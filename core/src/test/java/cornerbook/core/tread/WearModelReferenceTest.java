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
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The exact posterior against generalized least squares of Hipparchus (org.hipparchus:hipparchus-stat 4.0.3), with the
 * prior, the seasons and the offsets of the visits as pseudo-observations.
 */
class WearModelReferenceTest {
    private static final double RELATIVE = 1e-9;
    private static final int TYRES = 4;
    private static final int GROOVES = Spot.values().length;
    private static final int SEASONS = 6;
    private static final int RATES = GROOVES * TYRES;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void posteriorEqualsGeneralizedLeastSquares(long seed) {
        var random = new SplittableRandom(seed);
        var drive = DriveLayout.values()[random.nextInt(3)];
        var parameters = WearParameters.defaults(drive);
        var newDepthsMm = List.of(8.0, 8.1, 7.9, 8.5);
        var readings = sixSeasons(random);

        var newDepths = newDepthsMm.stream().map(NewDepth::stated).toList();
        var gaussian = new WearModel(parameters).gaussian(new SetDesign(newDepths, readings, Drivers.ONE, parameters));

        var regression = leastSquares(parameters, newDepthsMm, readings, new double[RATES]);
        var mean = regression.estimateRegressionParameters();
        var covariance = regression.estimateRegressionParametersVariance();
        for (int i = 0; i < gaussian.means().length; i++) {
            assertThat(gaussian.mean(i)).isCloseTo(mean[i], within(RELATIVE));
            for (int j = 0; j < gaussian.means().length; j++) {
                double scale = Math.sqrt(covariance[i][i] * covariance[j][j]);
                assertThat(gaussian.covariance(i, j)).isCloseTo(covariance[i][j], within(RELATIVE * scale));
            }
        }
    }

    /**
     * Were the usual rate of a place one unit higher, and all others as they go along with it, least squares would answer by
     * what of it is not the readings'.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void ownShareIsWhatTheUsualRateDoesNotPull(long seed) {
        var random = new SplittableRandom(seed);
        var parameters = WearParameters.defaults(DriveLayout.values()[random.nextInt(3)]);
        var newDepthsMm = List.of(8.0, 8.1, 7.9, 8.5);
        var newDepths = newDepthsMm.stream().map(NewDepth::stated).toList();
        var all = sixSeasons(random);
        for (var readings : List.of(all.subList(0, 12), all)) {
            var usual = leastSquares(parameters, newDepthsMm, readings, new double[RATES])
                    .estimateRegressionParameters();
            var posterior = new WearModel(parameters).fit(newDepths, readings);
            for (int rate : new int[] {0, 5, RATES - 1}) {
                var higher = new double[RATES];
                for (int i = 0; i < RATES; i++) {
                    higher[i] =
                            prior(parameters, RATES + i, RATES + rate) / prior(parameters, RATES + rate, RATES + rate);
                }
                var pulled =
                        leastSquares(parameters, newDepthsMm, readings, higher).estimateRegressionParameters();
                assertThat(posterior.ownShareOfRate(Spot.values()[rate / TYRES], Corner.values()[rate % TYRES]))
                        .isBetween(0.01, 0.999)
                        .isCloseTo(1 - (pulled[RATES + rate] - usual[RATES + rate]), within(RELATIVE));
            }
        }
        assertThat(new WearModel(parameters).fit(newDepths, List.of()).ownShareOfRate(Spot.CENTRE, Corner.LR))
                .isCloseTo(0, within(RELATIVE));
    }

    /** Rotations at each change-over, and a groove missing here and there. */
    private static List<TreadReading> sixSeasons(SplittableRandom random) {
        var readings = new ArrayList<TreadReading>();
        var corners = new ArrayList<>(List.of(Corner.values()));
        var run = new ArrayList<>(Collections.nCopies(TYRES, CornerDistances.NONE));
        for (int season = 0; season < SEASONS; season++) {
            for (int t = 0; t < TYRES; t++) {
                run.set(t, run.get(t).plus(season, corners.get(t), 3 + 5 * random.nextDouble()));
                for (var groove : Spot.values()) {
                    if (random.nextDouble() < 0.9) {
                        double depthMm = 8 - 0.17 * run.get(t).total() + 0.15 * random.nextDouble();
                        readings.add(new TreadReading(season, t, groove, run.get(t), Math.max(0.5, depthMm)));
                    }
                }
            }
            Collections.rotate(corners, 1 + random.nextInt(3));
        }
        return readings;
    }

    private static GLSMultipleLinearRegression leastSquares(
            WearParameters parameters, List<Double> newDepthsMm, List<TreadReading> readings, double[] higher) {
        int rates = GROOVES * TYRES;
        int seasons = 2 * rates;
        int offsets = seasons + SEASONS;
        int unknowns = offsets + SEASONS;
        int rows = readings.size() + unknowns;
        var observed = new double[rows];
        var design = new double[rows][unknowns];
        RealMatrix noise = MatrixUtils.createRealMatrix(rows, rows);
        for (int i = 0; i < readings.size(); i++) {
            var reading = readings.get(i);
            int groove = reading.groove().ordinal();
            double newMm = newDepthsMm.get(reading.tyre());
            double leftMm = reading.depthMm();
            double bend = leftMm > newMm ? newMm - leftMm : leftMm * (1 - leftMm / newMm);
            observed[i] = leftMm - newMm + parameters.of(WearParameter.SLOWING) * bend;
            design[i][groove * TYRES + reading.tyre()] = 1;
            for (var leg : reading.run().legs()) {
                design[i][rates + groove * TYRES + leg.corner().ordinal()] -= leg.thousandKm();
                design[i][seasons + leg.season()] -= share(parameters, leg.corner()) * leg.thousandKm();
            }
            design[i][offsets + reading.visit()] = 1;
            noise.setEntry(i, i, Math.pow(parameters.readingSdMm(), 2));
        }
        for (int i = 0; i < unknowns; i++) {
            design[readings.size() + i][i] = 1;
            for (int j = 0; j < unknowns; j++) {
                noise.setEntry(readings.size() + i, readings.size() + j, prior(parameters, i, j));
            }
        }
        for (int i = 0; i < rates; i++) {
            observed[readings.size() + rates + i] = parameters.rate(Corner.values()[i % TYRES].axle()) + higher[i];
        }
        var regression = new GLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(observed, design, noise.getData());
        return regression;
    }

    /** What a season adds goes with the mean rates of the axles. */
    private static double share(WearParameters parameters, Corner corner) {
        double frontMm = parameters.frontRateMmPer1000Km();
        double rearMm = parameters.rearRateMmPer1000Km();
        return (corner.axle() == Axle.FRONT ? frontMm : rearMm) / ((frontMm + rearMm) / 2);
    }

    /** Covariance of two unknowns before any reading. */
    private static double prior(WearParameters parameters, int i, int j) {
        int rates = GROOVES * TYRES;
        if (i < rates && j < rates) {
            double half = Math.pow(parameters.newDepthSdMm(), 2) / 2;
            return (i % TYRES == j % TYRES ? half : 0) + (i == j ? half : 0);
        }
        if (i >= 2 * rates || j >= 2 * rates) {
            var sd = i < 2 * rates + SEASONS ? WearParameter.SEASON_SD : WearParameter.VISIT_SD;
            return i == j ? Math.pow(parameters.of(sd), 2) : 0;
        }
        if (i < rates || j < rates) {
            return 0;
        }
        double spread = Math.pow(parameters.vehicleSpread(), 2)
                + (i % TYRES == j % TYRES ? Math.pow(parameters.of(WearParameter.CORNER_SPREAD), 2) : 0)
                + (i == j ? Math.pow(parameters.of(WearParameter.GROOVE_SPREAD), 2) : 0);
        return spread
                * parameters.rate(Corner.values()[i % TYRES].axle())
                * parameters.rate(Corner.values()[j % TYRES].axle());
    }
}
