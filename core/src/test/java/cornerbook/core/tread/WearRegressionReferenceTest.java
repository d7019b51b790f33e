package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/**
 * With a prior that says nothing and one tyre at one corner the corner-rate model is a straight line by least squares, which
 * published procedures and data use.
 */
class WearRegressionReferenceTest {
    /** So small against the prior's spread of 3 mm that the prior has no say. */
    private static final double GAUGE_SD_MM = 1e-4;

    /** What the straight line knows nothing of. */
    private static final double NOTHING = 1e-6;

    private static final double MIL_MM = 0.0254;
    private static final double MILE_KM = 1.609344;

    /** Intercept and slope of depth on distance. */
    private record Line(double interceptMm, double slopeMmPer1000Km) {}

    private static Line fit(double[] thousandKm, double[] depthMm) {
        var readings = new ArrayList<TreadReading>();
        for (int i = 0; i < thousandKm.length; i++) {
            var run = CornerDistances.NONE.plus(0, Corner.LF, thousandKm[i]);
            readings.add(new TreadReading(i, 0, Spot.CENTRE, run, depthMm[i]));
        }
        var flat = WearParameters.defaults(DriveLayout.FRONT)
                .with(WearParameter.READING_SD, GAUGE_SD_MM)
                .with(WearParameter.VISIT_SD, NOTHING)
                .with(WearParameter.SEASON_SD, NOTHING)
                .with(WearParameter.SLOWING, 0)
                .with(WearParameter.FRONT_RATE, 1)
                .with(WearParameter.VEHICLE_SPREAD, 9)
                .with(WearParameter.CORNER_SPREAD, 9);
        var posterior = new WearModel(flat).fit(List.of(NewDepth.unknown(8)), readings);
        return new Line(
                posterior.newDepth(Spot.CENTRE, 0).mean(),
                -posterior.rate(Spot.CENTRE, Corner.LF).mean());
    }

    /**
     * 49 CFR 575.104(e)(2): after a break-in of 800 miles depth is read every 800 miles to 6400; least squares of mils on
     * thousand miles give a and b; b' = b × base course wear rate / mean rate of the course monitoring tyres; projected
     * mileage = 1000 (a − 62) / b' + 800; grade = mileage × 100 / 30 000, rounded down to a multiple of 20. Base course
     * wear rate 1.34: 61 FR 47437. The formula of the mileage is from memory; the readings are invented in the rule's form.
     */
    @Test
    void treadwearGrading() {
        double[] thousandMiles = {0, 0.8, 1.6, 2.4, 3.2, 4.0, 4.8, 5.6, 6.4};
        double[] mils = {331.2, 326.9, 322.1, 318.0, 313.2, 309.4, 304.1, 300.3, 295.8};
        var regression = new SimpleRegression();
        var thousandKm = new double[mils.length];
        var depthMm = new double[mils.length];
        for (int i = 0; i < mils.length; i++) {
            regression.addData(thousandMiles[i], mils[i]);
            thousandKm[i] = thousandMiles[i] * MILE_KM;
            depthMm[i] = mils[i] * MIL_MM;
        }

        var line = fit(thousandKm, depthMm);

        double a = line.interceptMm / MIL_MM;
        double b = -line.slopeMmPer1000Km / MIL_MM * MILE_KM;
        assertThat(a).isCloseTo(regression.getIntercept(), within(1e-5));
        assertThat(b).isCloseTo(-regression.getSlope(), within(1e-5));
        double ofMonitoringTyres = 4.02;
        double mileage = projectedMiles(a, b, ofMonitoringTyres);
        assertThat(mileage)
                .isCloseTo(
                        projectedMiles(regression.getIntercept(), -regression.getSlope(), ofMonitoringTyres),
                        within(0.1));
        assertThat(grade(mileage)).isEqualTo(480);
    }

    /** NHTSA interpretation 10811: 5000 miles give 16.67 and the grade "00". */
    @Test
    void fiveThousandMilesGradeAsZero() {
        assertThat(5000 * 100 / 30_000.0).isCloseTo(16.67, within(0.005));
        assertThat(grade(5000)).isZero();
    }

    private static double projectedMiles(double a, double b, double ofMonitoringTyres) {
        double adjusted = b * 1.34 / ofMonitoringTyres;
        return 1000 * (a - 62) / adjusted + 800;
    }

    private static int grade(double miles) {
        return (int) Math.floor(miles * 100 / 30_000 / 20) * 20;
    }

    /**
     * Stichler, Richey and Mandel 1953, wear of sixteen tyres in thousand miles by weight and by groove depth; their line
     * weight = 1.32648 + 1.13685 groove was computed from the published table by exact least squares. Halved and counted down
     * from 24 mm to fit the range of a depth gauge and to wear as a tread does.
     */
    @Test
    void publishedTyreWear() {
        double[] byWeight = {
            45.9, 41.9, 37.5, 33.4, 31.0, 30.5, 30.9, 31.9, 30.4, 27.3, 20.4, 24.5, 20.9, 18.9, 13.7, 11.4
        };
        double[] byGroove = {
            35.7, 39.2, 31.1, 28.1, 24.0, 28.7, 25.9, 23.3, 23.1, 23.7, 20.9, 16.1, 19.9, 15.2, 11.5, 11.2
        };
        var left = new double[byWeight.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = 24 - byWeight[i] / 2;
        }

        var line = fit(byGroove, left);

        assertThat((24 - line.interceptMm) * 2).isCloseTo(1.32648, within(1e-4));
        assertThat(-line.slopeMmPer1000Km * 2).isCloseTo(1.13685, within(1e-5));
    }
}
