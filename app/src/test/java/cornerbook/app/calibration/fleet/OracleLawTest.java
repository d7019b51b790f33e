package cornerbook.app.calibration.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the sampler reads off the simulator is what the simulator does, day by day. */
class OracleLawTest {
    private static final int DAYS = 900;
    private static final double KM = 40;
    private static final double WORK = 1.5;

    @ParameterizedTest
    @EnumSource(
            value = Scenario.class,
            names = {"CONTROL", "WEAR_SLOWS", "GROOVES_ALIKE", "ALL"})
    void wornAsTheSimulatorWears(Scenario scenario) {
        var work = new double[Corner.values().length];
        Arrays.fill(work, WORK);
        var normals = new double[29];
        // Its own wear, the mould of the first tyre, its first groove's depth and wear.
        normals[0] = -1.3;
        normals[1] = 0.8;
        normals[2] = 0.8;
        normals[3] = 1.1;
        var tread = new Tread("car", 1, SeasonKind.WINTER, 0, scenario, new OracleLatents(normals, 0.5));
        var law = OracleLaw.tread(tread.set(), scenario);

        for (int day = 0; day < DAYS; day++) {
            tread.run(KM, work);
        }

        double start = law.newMm() + 0.8 * law.mouldMm();
        double amount = DAYS * KM * WORK * law.mmPerKj() * Math.exp(-1.3 * law.ofSet() + 1.1 * law.ofGroove());
        assertThat(tread.depthMm(0, Spot.values()[0])).isPositive().isCloseTo(law.worn(start, amount), within(0.01));
    }
}
