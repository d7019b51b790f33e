package cornerbook.core.brake.disc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.complex.Complex;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against Hipparchus (4.0.3): ordinary least squares for the harmonic, complex numbers for hub and disc. */
class RunoutReferenceTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void harmonicEqualsLeastSquares(long seed) {
        var random = new SplittableRandom(seed);
        int points = 4 + random.nextInt(9);
        var readings = new ArrayList<DialReading>();
        var value = new double[points];
        var design = new double[points][];
        for (int i = 0; i < points; i++) {
            double degrees = 360.0 * i / points + 10 * random.nextDouble();
            value[i] = 0.1 * random.nextDouble();
            design[i] = new double[] {Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees))};
            readings.add(new DialReading(degrees, value[i]));
        }
        var regression = new OLSMultipleLinearRegression();
        regression.newSampleData(value, design);
        var expected = regression.estimateRegressionParameters();
        var runout = Runout.of(readings);
        assertThat(runout.cosineMm()).isCloseTo(expected[1], within(1e-12));
        assertThat(runout.sineMm()).isCloseTo(expected[2], within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void hubAndDiscAreToldApart(long seed) {
        var random = new SplittableRandom(seed);
        int studs = 4 + random.nextInt(3);
        int by = 1 + random.nextInt(studs - 1);
        var hub = new Complex(0.1 * random.nextDouble() - 0.05, 0.1 * random.nextDouble() - 0.05);
        var disc = new Complex(0.1 * random.nextDouble() - 0.05, 0.1 * random.nextDouble() - 0.05);
        var turn = Complex.I.multiply(2 * Math.PI / studs).exp();

        var parts = HubAndDiscRunout.fromTwoPositions(
                runout(hub.add(disc)), runout(hub.add(disc.multiply(turn.pow(by)))), by, studs);

        same(parts.hub(), hub);
        same(parts.disc(), disc);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < studs; k++) {
            var installed = hub.add(disc.multiply(turn.pow(k)));
            same(parts.installed(k), installed);
            least = Math.min(least, 2 * installed.norm());
        }
        assertThat(parts.installed(parts.bestMove()).totalMm()).isCloseTo(least, within(1e-12));
    }

    /** Hub 0.04 mm high at stud 1 and disc 0.05 mm high a half turn on cancel to 0.01; half a turn of the disc makes 0.09. */
    @Test
    void opposedTiltsCancel() {
        var hub = new Runout(0.02, 0);
        var disc = new Runout(0.025, 0);
        var parts = new HubAndDiscRunout(hub, disc, 4);
        assertThat(parts.installed(0).totalMm()).isCloseTo(0.09, within(1e-12));
        assertThat(parts.bestMove()).isEqualTo(2);
        assertThat(parts.installed(2).totalMm()).isCloseTo(0.01, within(1e-12));
        assertThat(parts.installed(2).highSpotDegrees()).isCloseTo(180, within(1e-9));
    }

    /** The hub face read at half the radius shows half of the hub's part. */
    @Test
    void hubFaceIsScaledToTheDisc() {
        var parts = HubAndDiscRunout.fromHubFace(new Runout(0.03, 0.02), new Runout(0.01, 0), 65, 130, 5);
        assertThat(parts.hub().cosineMm()).isCloseTo(0.02, within(1e-12));
        assertThat(parts.disc().cosineMm()).isCloseTo(0.01, within(1e-12));
        assertThat(parts.disc().sineMm()).isCloseTo(0.02, within(1e-12));
    }

    @Test
    void readingsThatDoNotGoAroundAreRefused() {
        var tooFew = List.of(0.01, 0.02, 0.01);
        assertThatThrownBy(() -> Runout.ofEquallySpaced(tooFew)).hasMessage("3 dial readings, expected 4 or more");
        var inOnePlace = List.of(
                new DialReading(0, 0.01), new DialReading(0, 0.01), new DialReading(360, 0), new DialReading(360, 0));
        assertThatThrownBy(() -> Runout.of(inOnePlace)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Runout runout(Complex vector) {
        return new Runout(vector.getReal(), vector.getImaginary());
    }

    private static void same(Runout ours, Complex expected) {
        assertThat(ours.cosineMm()).isCloseTo(expected.getReal(), within(1e-12));
        assertThat(ours.sineMm()).isCloseTo(expected.getImaginary(), within(1e-12));
    }
}
