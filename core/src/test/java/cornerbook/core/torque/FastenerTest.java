package cornerbook.core.torque;

import cornerbook.core.say.Formula;

import cornerbook.core.say.Amount;

import cornerbook.core.say.Said;

import cornerbook.core.say.Facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.why.Step;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FastenerTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"M14x1.5|M14×1.5", "m12 × 1,25|M12×1.25", "M12|M12×1.75", "M14-1.5|M14×1.5"})
    void threadsAsPeopleWriteThem(String written, String shown) {
        assertThat(ScrewThread.parse(written)).hasToString(shown);
        assertThat(ScrewThread.parse(shown)).isEqualTo(ScrewThread.parse(written));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1/0-20 | NoInchThread(Quoted(1/0-20))",
                "20 UNF | NoThread(Quoted(20 UNF))",
                "M13 | NoCoarsePitch(Quoted(M13))",
                "M14×5 | OutOfRange(THREAD_PITCH, 5 mm, 0.5 to 2.8 mm)",
                "M100×2 | OutOfRange(THREAD_DIAMETER, 100 mm, 5 to 39 mm)"
            })
    void otherThreadsAreRefused(String written, String part) {
        assertThat(Facts.refused(() -> ScrewThread.parse(written))).isEqualTo(part);
    }

    @Test
    void whatCannotBeIsRefusedWithThePartNamed() {
        assertThat(Facts.refused(() -> PropertyClass.parse("9.9")))
                .isEqualTo("NoPropertyClass(Quoted(9.9), [8.8, 10.9, 12.9, grade 5, grade 8])");
        assertThat(Facts.refused(() -> WrenchSetting.of(130, 300, 250, 180)))
                .isEqualTo("AdapterTooLong(250 mm, 180 °, 300 mm)");
        assertThat(Facts.refused(() -> new WrenchScale(5, 60).check(130)))
                .isEqualTo("OutOfRange(SETTING_OF_WRENCH, 130 N·m, 5 to 60 N·m)");
        assertThat(Facts.refused(() -> WrenchSetting.of(Double.NaN, 450, 0, 0)))
                .isEqualTo("OutOfRange(TORQUE, NaN, 1 to 1000 N·m)");
        assertThat(Facts.refused(() -> TighteningOrder.of(11))).isEqualTo("FastenerCount(11, 3, 10)");
        assertThat(Facts.refused(() -> SeatFace.ball(30, 10))).startsWith("OutOfRange(RADIUS_OF_BALL, 10 mm, ");
    }

    @Test
    void aLubricatedThreadIsWarnedOfAndNeverCorrected() {
        var thread = ScrewThread.parse("M12×1.5");
        var oiled = ShortForm.of(thread, PropertyClass.CLASS_8_8, ThreadState.OILED, 110);
        assertThat(oiled.leastGain()).isEqualTo(1.25);
        assertThat(oiled.cautions())
                .extracting(Facts::of)
                .containsExactly(
                        "ClampsMore(25, 33, OILED)", "CanPassProofLoad(M12×1.5, Strength(8.8, false), OILED)");
        assertThat(ShortForm.of(thread, PropertyClass.CLASS_10_9, ThreadState.DRY, 110)
                        .cautions())
                .isEmpty();
    }

    @Test
    void aBarIsABandAndNotASetting() {
        var strong = TorqueBar.of(130, 120, 15);
        assertThat(strong.fits()).isFalse();
        assertThat(strong.cautions()).first().isInstanceOf(TorqueSaid.BarTooStrong.class);
        assertThat(TorqueBar.of(130, 90, 15).fits()).isTrue();
    }

    @Test
    void theWrenchIsDueByTheCalendarOrByItsCycles() {
        var last = LocalDate.of(2026, 1, 10);
        assertThat(WrenchCalibration.of(last, 100, LocalDate.of(2027, 1, 9)).due())
                .isFalse();
        assertThat(WrenchCalibration.of(last, 100, LocalDate.of(2027, 1, 10)).due())
                .isTrue();
        assertThat(WrenchCalibration.of(last, 5000, LocalDate.of(2026, 2, 1)).due())
                .isTrue();
        assertThat(Facts.refused(() -> WrenchCalibration.of(last, 0, LocalDate.of(2026, 1, 9))))
                .isEqualTo("CalibratedAfter(2026-01-10, 2026-01-09)");
    }

    /** By hand: a wrench that shows 3 N·m too much clicks at 130 when 133 stands on its scale. */
    @Test
    void whatAWrenchShowsTooMuchIsAddedToItsSetting() {
        var scale = new WrenchScale(40, 200);
        assertThat(ScaleSetting.of(scale, 130, 3).settingNm()).isEqualTo(133);
        assertThat(ScaleSetting.of(scale, 130, 3).cautions()).isEmpty();
        assertThat(ScaleSetting.of(new WrenchScale(10, 200), 41, -3).cautions())
                .containsExactly(TorqueSaid.Caution.LOWEST_FIFTH);
        assertThat(Facts.refused(() -> ScaleSetting.of(scale, 198, 3)))
                .isEqualTo("OutOfRange(SETTING_OF_WRENCH, 201 N·m, 40 to 200 N·m)");
        assertThat(Facts.refused(() -> ScaleSetting.of(scale, 130, 21)))
                .isEqualTo("OutOfRange(OFFSET_OF_WRENCH, 21 N·m, -20 to 20 N·m)");
    }

    /** By hand from K: 0.25/0.20 to 0.20/0.15, and 0.25/0.16 to 0.20/0.12 (handbook values of K). */
    @ParameterizedTest
    @CsvSource({"OILED, 25, 33", "ANTI_SEIZE, 56, 67"})
    void aLubricatedThreadClampsSoMuchMore(ThreadState state, int least, int most) {
        var form = ShortForm.of(ScrewThread.parse("M14×1.5"), PropertyClass.CLASS_10_9, state, 140);
        assertThat(form.cautions())
                .extracting(Facts::of)
                .contains("ClampsMore(%d, %d, %s)".formatted(least, most, state));
    }

    /** By hand: 140 N·m / (0.25 × 14 mm) = 40 kN, 140 N·m / (0.20 × 14 mm) = 50 kN. */
    @Test
    void theWorkingOfTheShortFormShowsItsLoads() {
        var form = ShortForm.of(ScrewThread.parse("M14×1.5"), PropertyClass.CLASS_10_9, ThreadState.DRY, 140);
        assertThat(form.steps())
                .extracting(Step::what, Step::shown)
                .contains(
                        tuple(new TorqueSaid.LeastClampLoad(ThreadState.DRY), new Amount(40, "kN", 0)),
                        tuple(new TorqueSaid.MostClampLoad(ThreadState.DRY), new Amount(50, "kN", 0)));
        assertThat(form.steps().get(2).value() * 1000).isCloseTo(50_000 / form.mostShareOfProof(), within(1e-6));
        assertThat(form.steps().getLast().value()).isCloseTo(100 * form.mostShareOfProof(), within(1e-9));
    }

    /** An inch thread by ASME B1.1, a metric one by ISO 898-1: the formula shown is that of the number. */
    @Test
    void theStressAreaIsShownByItsOwnStandard() {
        assertThat(area("1/2-20 UNF")).isEqualTo("0.7854 (d − 0.9743 P)², UNIFIED_AREA_SOURCE");
        assertThat(area("M14×1.5")).isEqualTo("π/4 ((d2 + d3)/2)², METRIC_AREA_SOURCE");
    }

    private static String area(String thread) {
        var load = ClampLoad.of(
                ScrewThread.parse(thread), PropertyClass.CLASS_10_9, SeatFace.flat(15, 20), FrictionBand.DRY, 100);
        var step = load.steps().stream()
                .filter(each -> each.what() == TorqueSaid.Label.STRESS_AREA)
                .findFirst()
                .orElseThrow();
        return ((Formula) step.formula()).pattern().replaceAll(", d3.*", "") + ", " + Facts.of(step.source());
    }

    /** Threads of wheel studs, written in the largest parts of an inch. */
    @ParameterizedTest
    @CsvSource({"1/2-20 UNF, 1/2-20", "7/16-20 UNF, 7/16-20", "9/16-18 UNF, 9/16-18", "5/8-18 UNF, 5/8-18"})
    void inchThreadsAreWrittenAsTheTradeDoes(String written, String shown) {
        assertThat(ScrewThread.parse(written)).hasToString(shown);
    }

    /** The clamp load's working is in kilonewtons, and its shares are those of the proof load. */
    @Test
    void theClampLoadIsShownAgainstItsProofLoad() {
        var load = ClampLoad.of(
                ScrewThread.parse("M14×1.5"), PropertyClass.CLASS_10_9, SeatFace.cone(18, 60), FrictionBand.DRY, 140);
        double proofKn = step(load, new TorqueSaid.ProofLoad(PropertyClass.CLASS_10_9.told()));
        assertThat(load.leastN() / 1000).isCloseTo(load.leastShareOfProof() * proofKn, within(1e-9));
        assertThat(load.mostN() / 1000).isCloseTo(load.mostShareOfProof() * proofKn, within(1e-9));
        assertThat(step(load, TorqueSaid.Label.LEAST_CLAMP_LOAD)).isCloseTo(load.leastN() / 1000, within(1e-9));
        assertThat(step(load, TorqueSaid.Label.MOST_CLAMP_LOAD)).isCloseTo(load.mostN() / 1000, within(1e-9));
    }

    private static double step(ClampLoad load, Said what) {
        return load.steps().stream()
                .filter(each -> each.what().equals(what))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** With hardly any friction most of the torque goes into the stud: first past 90 % of its yield, then past its proof load. */
    @Test
    void aTorqueThatStretchesTheStudIsSaid() {
        var thread = ScrewThread.parse("M14×1.5");
        var slippery = new FrictionBand(0.08, 0.10);
        double yieldNm = clamp(thread, slippery, 100).torqueAtYieldNm();
        assertThat(clamp(thread, slippery, yieldNm * 0.999).cautions()).isEmpty();
        assertThat(clamp(thread, slippery, yieldNm * 1.001).cautions())
                .singleElement()
                .isInstanceOfAny(TorqueSaid.PassesYield.class, TorqueSaid.PassesProofLoad.class);
        double proofNm = 100 / clamp(thread, slippery, 100).mostShareOfProof();
        assertThat(clamp(thread, slippery, proofNm * 1.001).cautions())
                .hasAtLeastOneElementOfType(TorqueSaid.PassesProofLoad.class);
    }

    private static ClampLoad clamp(ScrewThread thread, FrictionBand friction, double torqueNm) {
        return ClampLoad.of(thread, PropertyClass.CLASS_10_9, SeatFace.cone(18, 60), friction, torqueNm);
    }

    /** By geometry: a cone of 60° grips as 1/sin 30° = 2; a ball of 15 mm under a mean diameter of 18 mm as 1/√(1 − 0.6²) = 1.25. */
    @Test
    void theSeatGripsByItsShape() {
        assertThat(SeatFace.cone(18, 60).grip()).isCloseTo(2, within(1e-12));
        assertThat(SeatFace.ball(18, 15).grip()).isCloseTo(1.25, within(1e-12));
        assertThat(SeatFace.flat(15, 22).meanDiameterMm()).isEqualTo(18.5);
        assertThat(SeatFace.usualMeanDiameterMm(ScrewThread.parse("M14×1.5"))).isCloseTo(18.2, within(1e-12));
    }

    /** 90 N·m give 76.5 to 103.5 N·m with 15 % either way; up to 90 % of the torque asked may be run up: 103.5 of 115. */
    @Test
    void theBandOfABarIsItsSpread() {
        var bar = TorqueBar.of(115, 90, 15);
        assertThat(bar.leastNm()).isCloseTo(76.5, within(1e-9));
        assertThat(bar.mostNm()).isCloseTo(103.5, within(1e-9));
        assertThat(bar.fits()).isTrue();
        assertThat(TorqueBar.of(114.9, 90, 15).fits()).isFalse();
    }

    /** Turned back by half of the wrench's length, an adapter doubles the setting; farther back it is refused. */
    @Test
    void anAdapterMayTakeHalfOfTheWrench() {
        assertThat(WrenchSetting.of(130, 450, 225, 180).settingNm()).isCloseTo(260, within(1e-9));
        assertThat(Facts.refused(() -> WrenchSetting.of(130, 450, 226, 180))).startsWith("AdapterTooLong(226 mm, ");
    }

    @Test
    void aWrenchThatIsDueIsNotTrusted() {
        var last = LocalDate.of(2026, 1, 10);
        assertThat(WrenchCalibration.of(last, 4999, last).cautions()).isEmpty();
        assertThat(WrenchCalibration.of(last, 5000, last).cautions())
                .containsExactly(TorqueSaid.Caution.DUE_FOR_CALIBRATION);
        assertThat(Facts.refused(() -> WrenchCalibration.of(last, -1, last))).isEqualTo("NegativeCycles(-1)");
    }

    /** The lowest fifth of a scale is not trusted (ISO 6789, from memory): 40 of 200 N·m is its end. */
    @Test
    void theLowestFifthOfAScaleEndsAtAFifth() {
        assertThat(ScaleSetting.of(new WrenchScale(10, 200), 40, 0).cautions()).isEmpty();
        assertThat(ScaleSetting.of(new WrenchScale(10, 200), 39.9, 0).cautions())
                .hasSize(1);
    }

    /** ISO 898-1, class 8.8: up to 16 mm 580 MPa of proof and 640 MPa of yield, above 600 and 660 MPa. */
    @ParameterizedTest
    @CsvSource({"M16, 580, 640", "M18, 600, 660"})
    void thickBoltsOfClass88AreStronger(String thread, double proofMpa, double yieldMpa) {
        var bolt = ScrewThread.parse(thread);
        assertThat(PropertyClass.CLASS_8_8.proofStressMpa(bolt)).isEqualTo(proofMpa);
        assertThat(PropertyClass.CLASS_8_8.yieldStressMpa(bolt)).isEqualTo(yieldMpa);
    }

    @Test
    void strengthNamesItsStandard() {
        assertThat(PropertyClass.GRADE_8.source()).isEqualTo(TorqueSaid.Label.GRADE_SOURCE);
        assertThat(PropertyClass.CLASS_10_9.source()).isEqualTo(TorqueSaid.Label.CLASS_SOURCE);
    }

    @Test
    void theStateOfAThreadIsReadByItsWord() {
        for (var state : ThreadState.values()) {
            assertThat(ThreadState.parse(" " + state.word().toUpperCase(Locale.ROOT)))
                    .isEqualTo(state);
        }
        assertThat(Facts.refused(() -> ThreadState.parse("wet"))).isEqualTo("NoThreadState(Quoted(wet))");
    }
}
