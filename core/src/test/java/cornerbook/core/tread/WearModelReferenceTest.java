package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.Estimate;
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
 * prior as pseudo-observations of the eight unknowns.
 */
class WearModelReferenceTest {
    private static final double RELATIVE = 1e-9;
    private static final int TYRES = 4;
    private static final int UNKNOWNS = 8;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void posteriorEqualsGeneralizedLeastSquares(long seed) {
        var random = new SplittableRandom(seed);
        var drive = DriveLayout.values()[random.nextInt(3)];
        var parameters = WearParameters.defaults(drive);
        var newDepthsMm = List.of(8.0, 8.1, 7.9, 8.5);
        var readings = sixSeasons(random);

        var posterior = new WearModel(parameters)
                .fit(newDepthsMm.stream().map(NewDepth::stated).toList(), readings);

        for (var groove : Spot.values()) {
            var regression = leastSquares(parameters, newDepthsMm, readings, groove);
            var mean = regression.estimateRegressionParameters();
            var covariance = regression.estimateRegressionParametersVariance();
            for (int t = 0; t < TYRES; t++) {
                same(posterior.newDepth(groove, t), mean[t], Math.sqrt(covariance[t][t]));
            }
            for (var corner : Corner.values()) {
                int c = TYRES + corner.ordinal();
                same(posterior.rate(groove, corner), mean[c], Math.sqrt(covariance[c][c]));
                for (var other : Corner.values()) {
                    assertThat(posterior.rateCovariance(groove, corner, other))
                            .isCloseTo(covariance[c][TYRES + other.ordinal()], within(1e-9 * covariance[c][c]));
                }
            }
        }
    }

    private static void same(Estimate ours, double mean, double sd) {
        assertThat(ours.mean()).isCloseTo(mean, within(RELATIVE * Math.abs(mean)));
        assertThat(ours.sd()).isCloseTo(sd, within(RELATIVE * sd));
    }

    /** Rotations at each change-over, and a groove missing here and there. */
    private static List<TreadReading> sixSeasons(SplittableRandom random) {
        var readings = new ArrayList<TreadReading>();
        var corners = new ArrayList<>(List.of(Corner.values()));
        var run = new ArrayList<>(Collections.nCopies(TYRES, CornerDistances.NONE));
        for (int season = 0; season < 6; season++) {
            for (int t = 0; t < TYRES; t++) {
                run.set(t, run.get(t).plus(corners.get(t), 3 + 5 * random.nextDouble()));
                for (var groove : Spot.values()) {
                    if (random.nextDouble() < 0.9) {
                        double depthMm = 8 - 0.17 * run.get(t).total() + 0.15 * random.nextDouble();
                        readings.add(new TreadReading(t, groove, run.get(t), Math.max(0.5, depthMm)));
                    }
                }
            }
            Collections.rotate(corners, 1 + random.nextInt(3));
        }
        return readings;
    }

    private static GLSMultipleLinearRegression leastSquares(
            WearParameters parameters, List<Double> newDepthsMm, List<TreadReading> readings, Spot groove) {
        var chosen = readings.stream().filter(r -> r.groove() == groove).toList();
        int rows = chosen.size() + UNKNOWNS;
        var observed = new double[rows];
        var design = new double[rows][UNKNOWNS];
        RealMatrix noise = MatrixUtils.createRealMatrix(rows, rows);
        for (int i = 0; i < chosen.size(); i++) {
            var reading = chosen.get(i);
            observed[i] = reading.depthMm();
            design[i][reading.tyre()] = 1;
            for (var corner : Corner.values()) {
                design[i][TYRES + corner.ordinal()] = -reading.run().at(corner);
            }
            noise.setEntry(i, i, Math.pow(parameters.readingSdMm(), 2));
        }
        for (int t = 0; t < TYRES; t++) {
            int row = chosen.size() + t;
            observed[row] = newDepthsMm.get(t);
            design[row][t] = 1;
            noise.setEntry(row, row, Math.pow(parameters.newDepthSdMm(), 2));
        }
        for (var corner : Corner.values()) {
            int row = chosen.size() + TYRES + corner.ordinal();
            observed[row] = parameters.rate(corner.axle());
            design[row][TYRES + corner.ordinal()] = 1;
            for (var other : Corner.values()) {
                double shared = Math.pow(parameters.vehicleSpread(), 2);
                double own = corner == other ? Math.pow(parameters.cornerSpread(), 2) : 0;
                noise.setEntry(
                        row,
                        chosen.size() + TYRES + other.ordinal(),
                        parameters.rate(corner.axle()) * parameters.rate(other.axle()) * (shared + own));
            }
        }
        var regression = new GLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(observed, design, noise.getData());
        return regression;
    }
}
