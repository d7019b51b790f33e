package cornerbook.core.lift;

import static cornerbook.core.lift.Ratings.rated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArmLoadsReferenceTest {
    private static final double RELATIVE = 1e-9;

    /**
     * Against Hipparchus (org.hipparchus:hipparchus-core 4.0.3): among all loads that balance sum and moments, the singular
     * value decomposition gives the one of least squares, which is that of equal springs.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void equalSpringsAreTheLeastSquaresSolution(long seed) {
        var random = new SplittableRandom(seed);
        int compared = 0;
        for (int i = 0; i < 50; i++) {
            var points = anyPoints(random);
            double totalKg = random.nextDouble(900, 3000);
            double x = random.nextDouble(900, 2000);
            double y = random.nextDouble(-300, 300);
            if (points.marginMm(x, y) <= 0) {
                continue;
            }
            var balance = new double[3][4];
            for (var corner : Corner.values()) {
                balance[0][corner.ordinal()] = 1;
                balance[1][corner.ordinal()] = points.get(corner).behindFrontAxleMm() / 1000;
                balance[2][corner.ordinal()] = points.get(corner).leftOfCentreMm() / 1000;
            }
            var expected = new SingularValueDecomposition(MatrixUtils.createRealMatrix(balance))
                    .getSolver()
                    .solve(MatrixUtils.createRealVector(
                            new double[] {totalKg, totalKg * x / 1000, totalKg * y / 1000}));
            if (expected.getMinValue() < 0) {
                continue;
            }
            var loads = new Support(points, totalKg, x, y).equalSprings();
            for (int corner = 0; corner < 4; corner++) {
                assertThat(loads[corner]).isCloseTo(expected.getEntry(corner), within(RELATIVE * totalKg));
            }
            compared++;
        }
        assertThat(compared).isGreaterThan(10);
    }

    private static LiftPoints anyPoints(SplittableRandom random) {
        return new LiftPoints(
                new LiftPoint(random.nextDouble(300, 800), random.nextDouble(500, 800)),
                new LiftPoint(random.nextDouble(300, 800), random.nextDouble(-800, -500)),
                new LiftPoint(random.nextDouble(1900, 2400), random.nextDouble(500, 800)),
                new LiftPoint(random.nextDouble(1900, 2400), random.nextDouble(-800, -500)));
    }

    /**
     * The table on four equal legs, a square of side a with the load P on a diagonal at e from the middle: the legs on the other
     * diagonal carry P/4 each, the near one P (1/4 + e/(√2 a)), the far one P (1/4 − e/(√2 a)) (Timoshenko, Strength of
     * Materials, part I, problem of the square table; from memory).
     */
    @Test
    void aSquareTableWithItsLoadOnADiagonal() {
        double sideMm = 1000;
        double eccentricityMm = 200;
        var table = LiftPoints.symmetric(0, sideMm, sideMm);
        double along = eccentricityMm / Math.sqrt(2);
        var loads = new Support(table, 100, sideMm / 2 - along, along).equalSprings();
        double more = 100 * eccentricityMm / (Math.sqrt(2) * sideMm);
        assertThat(loads[Corner.LF.ordinal()]).isCloseTo(25 + more, within(1e-9));
        assertThat(loads[Corner.RR.ordinal()]).isCloseTo(25 - more, within(1e-9));
        assertThat(loads[Corner.RF.ordinal()]).isCloseTo(25, within(1e-9));
        assertThat(loads[Corner.LR.ordinal()]).isCloseTo(25, within(1e-9));
    }

    /** By hand: 1000 + 1000 kg on 2800 mm; points at 600 and 2000 mm; moments about the rear points give 2000 × 600/1400 in front. */
    @Test
    void frontAndRearByMoments() {
        var loads = ArmLoads.of(
                new CarMass(1000, 1000, 2800, 0.5, 1600),
                LiftPoints.symmetric(600, 2000, 1500),
                List.of(),
                rated(1000, 4000));
        double front = loads.arm(Corner.LF).loadKg() + loads.arm(Corner.RF).loadKg();
        assertThat(front).isCloseTo(2000 * 600.0 / 1400, within(1e-9));
    }

    /**
     * A hoist seller's page: 9000 lb with 3000 lb in front and 6000 lb behind are too much for a hoist of 10 000 lb with 2500 lb
     * an arm, and ask for one of 12 000 lb: 3000 lb on each rear arm, which is its rating. Another page ("Heavy-duty vehicle lift
     * safety tips", tip 3) has 4500 lb and 7000 lb on the latter: each rear arm has 3500 lb to carry and is overloaded.
     */
    @ParameterizedTest
    @CsvSource({"3000, 6000, 12000, true", "3000, 6000, 10000, false", "4500, 7000, 12000, false"})
    void aHoistIsChosenByTheLoadOfItsArms(double frontLb, double rearLb, double hoistLb, boolean holds) {
        for (var points : new LiftPoints[] {null, LiftPoints.symmetric(0, 3500, 1800)}) {
            var loads = ArmLoads.of(
                    new CarMass(kg(frontLb), kg(rearLb), 3500, 0.5, 1800),
                    points,
                    List.of(),
                    new HoistRating(kg(hoistLb), null, null));
            assertThat(loads.arm(Corner.LR).loadKg()).isCloseTo(kg(rearLb / 2), within(1e-9));
            assertThat(loads.holds()).isEqualTo(holds);
        }
    }

    private static double kg(double lb) {
        return lb * 0.45359237;
    }
}
