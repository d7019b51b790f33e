package cornerbook.core.torque;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.quantity.Quantities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Published tables of ISO 898-1 and VDI 2230 and published examples; sources and tolerances stand in the files. */
class FastenerReferenceTest {
    private static final String FOLDER = "/reference/fastener/";

    /** Bearing faces for the table: head of ISO 4014 (16.63 and 19.64 mm), medium hole of ISO 273 (13.5 and 15.5 mm). */
    private static SeatFace headOf(ScrewThread thread) {
        return thread.diameterMm() == 12 ? SeatFace.flat(13.5, 16.63) : SeatFace.flat(15.5, 19.64);
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "assembly-preload.csv", numLinesToSkip = 1)
    void assemblyPreloadAndItsTorque(
            String written,
            double friction,
            String strength,
            double preloadKn,
            double preloadToleranceKn,
            double torqueNm,
            double torqueToleranceNm,
            String source) {
        var thread = ScrewThread.parse(written);
        double loadN = Tightening.assemblyPreloadN(thread, PropertyClass.parse(strength), friction);
        assertThat(loadN / 1000).as(source).isCloseTo(preloadKn, within(preloadToleranceKn));
        assertThat(loadN / 1000 * Tightening.torquePerLoadMm(thread, headOf(thread), friction))
                .as(source)
                .isCloseTo(torqueNm, within(torqueToleranceNm));
    }

    /** The standard multiplies the printed, rounded area; ours is not rounded, so it may differ by that rounding too. */
    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "proof-load.csv", numLinesToSkip = 1)
    void stressAreaAndProofLoad(
            String written,
            double areaMm2,
            double areaToleranceMm2,
            String strength,
            double loadN,
            double loadToleranceN,
            String source) {
        var thread = ScrewThread.parse(written);
        assertThat(thread.stressAreaMm2()).as(source).isCloseTo(areaMm2, within(areaToleranceMm2));
        double stressMpa = PropertyClass.parse(strength).proofStressMpa(thread);
        assertThat(stressMpa * areaMm2).as(source).isCloseTo(loadN, within(loadToleranceN));
        assertThat(PropertyClass.parse(strength).proofLoadN(thread))
                .as(source)
                .isCloseTo(loadN, within(loadToleranceN + stressMpa * areaToleranceMm2));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "unified-thread.csv", numLinesToSkip = 1)
    void inchThread(
            String written,
            double pitchDiameterIn,
            double minorDiameterIn,
            double diameterToleranceIn,
            double areaIn2,
            double areaToleranceIn2,
            String source) {
        var thread = ScrewThread.parse(written);
        assertThat(thread.pitchDiameterMm() / 25.4).as(source).isCloseTo(pitchDiameterIn, within(diameterToleranceIn));
        assertThat(thread.minorDiameterMm() / 25.4).as(source).isCloseTo(minorDiameterIn, within(diameterToleranceIn));
        assertThat(thread.stressAreaMm2() / (25.4 * 25.4)).as(source).isCloseTo(areaIn2, within(areaToleranceIn2));
        assertThat(ScrewThread.parse(thread.toString())).isEqualTo(thread);
    }

    /** SAE J429 as Shigley & Mischke, Mechanical Engineering Design, prints it: ksi, 1 ksi = 6.894757 MPa. */
    @ParameterizedTest
    @CsvSource({"grade 5, 1/2-20, 85, 92", "grade 8, 1/2-20, 120, 130"})
    void inchGrade(String written, String thread, double proofKsi, double yieldKsi) {
        var grade = PropertyClass.parse(written);
        assertThat(grade.proofStressMpa(ScrewThread.parse(thread))).isCloseTo(proofKsi * 6.894757, within(0.5));
        assertThat(grade.yieldStressMpa(ScrewThread.parse(thread))).isCloseTo(yieldKsi * 6.894757, within(0.5));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "short-form.csv", numLinesToSkip = 1)
    void clampLoadByTheShortForm(
            double torqueNm, double factor, double diameterMm, double loadKn, double toleranceKn, String source) {
        assertThat(ShortForm.clampLoadN(torqueNm, factor, diameterMm) / 1000)
                .as(source)
                .isCloseTo(loadKn, within(toleranceKn));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "adapter.csv", numLinesToSkip = 1)
    void settingWithAnAdapter(
            double torque,
            double length,
            double adapter,
            double angle,
            double setting,
            double tolerance,
            String source) {
        var result = WrenchSetting.of(
                Quantities.parse(torque + " lbf·ft", "N·m"),
                Quantities.parse(length + " in", "mm"),
                Quantities.parse(adapter + " in", "mm"),
                angle);
        assertThat(Quantities.in("lbf·ft", result.settingNm(), "N·m"))
                .as(source)
                .isCloseTo(setting, within(tolerance));
    }
}
