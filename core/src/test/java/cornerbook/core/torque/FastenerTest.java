package cornerbook.core.torque;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
                "1/0-20 | thread is \"1/0-20\", expected an inch thread as 1/2-20 UNF",
                "20 UNF | thread is \"20 UNF\", expected a metric thread as M14×1.5 or an inch thread as 1/2-20 UNF",
                "M13 | thread \"M13\" has no coarse pitch here",
                "M14×5 | thread pitch is 5 mm, expected 0.5000 to 2.800 mm",
                "M100×2 | thread diameter is 100 mm, expected 5 to 39 mm"
            })
    void otherThreadsAreRefused(String written, String part) {
        assertThatThrownBy(() -> ScrewThread.parse(written)).hasMessageContaining(part);
    }

    @Test
    void whatCannotBeIsRefusedWithThePartNamed() {
        assertThatThrownBy(() -> PropertyClass.parse("9.9"))
                .hasMessage("property class is \"9.9\", expected one of 8.8, 10.9, 12.9, grade 5, grade 8");
        assertThatThrownBy(() -> WrenchSetting.of(130, 300, 250, 180))
                .hasMessageStartingWith("adapter of 250 mm at 180°");
        assertThatThrownBy(() -> new WrenchScale(5, 60).check(130))
                .hasMessage("setting of the wrench is 130 N·m, expected 5 to 60 N·m");
        assertThatThrownBy(() -> WrenchSetting.of(Double.NaN, 450, 0, 0)).hasMessageStartingWith("torque is NaN");
        assertThatThrownBy(() -> TighteningOrder.of(11)).hasMessage("fasteners per wheel are 11, expected 3 to 10");
        assertThatThrownBy(() -> SeatFace.ball(30, 10)).hasMessageStartingWith("radius of the ball seat is 10 mm");
    }

    @Test
    void aLubricatedThreadIsWarnedOfAndNeverCorrected() {
        var thread = ScrewThread.parse("M12×1.5");
        var oiled = ShortForm.of(thread, PropertyClass.CLASS_8_8, ThreadState.OILED, 110);
        assertThat(oiled.leastGain()).isEqualTo(1.25);
        assertThat(oiled.cautions()).anyMatch(caution -> caution.contains("follow the vehicle's manual"));
        assertThat(oiled.cautions())
                .anyMatch(caution -> caution.contains("can pass the proof load of M12×1.5 class 8.8"));
        assertThat(ShortForm.of(thread, PropertyClass.CLASS_10_9, ThreadState.DRY, 110)
                        .cautions())
                .isEmpty();
    }

    @Test
    void aBarIsABandAndNotASetting() {
        var strong = TorqueBar.of(130, 120, 15);
        assertThat(strong.fits()).isFalse();
        assertThat(strong.cautions()).first().asString().contains("take a weaker one");
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
        assertThatThrownBy(() -> WrenchCalibration.of(last, 0, LocalDate.of(2026, 1, 9)))
                .hasMessageContaining("expected a day not after 2026-01-09");
    }

    /** By hand: a wrench that shows 3 N·m too much clicks at 130 when 133 stands on its scale. */
    @Test
    void whatAWrenchShowsTooMuchIsAddedToItsSetting() {
        var scale = new WrenchScale(40, 200);
        assertThat(ScaleSetting.of(scale, 130, 3).settingNm()).isEqualTo(133);
        assertThat(ScaleSetting.of(scale, 130, 3).cautions()).isEmpty();
        assertThat(ScaleSetting.of(new WrenchScale(10, 200), 41, -3).cautions())
                .containsExactly("The setting lies in the lowest fifth of the scale: take a smaller wrench.");
        assertThatThrownBy(() -> ScaleSetting.of(scale, 198, 3))
                .hasMessage("setting of the wrench is 201 N·m, expected 40 to 200 N·m");
        assertThatThrownBy(() -> ScaleSetting.of(scale, 130, 21))
                .hasMessage("offset of the wrench is 21 N·m, expected -20 to 20 N·m");
    }

    /** By hand from K: 0.25/0.20 to 0.20/0.15, and 0.25/0.16 to 0.20/0.12 (handbook values of K). */
    @ParameterizedTest
    @CsvSource({"OILED, 25 to 33 %", "ANTI_SEIZE, 56 to 67 %"})
    void aLubricatedThreadClampsSoMuchMore(ThreadState state, String more) {
        var form = ShortForm.of(ScrewThread.parse("M14×1.5"), PropertyClass.CLASS_10_9, state, 140);
        assertThat(form.cautions()).anyMatch(caution -> caution.contains("clamps " + more + " more"));
    }

    /** By hand: 140 N·m / (0.25 × 14 mm) = 40 kN, 140 N·m / (0.20 × 14 mm) = 50 kN. */
    @Test
    void theWorkingOfTheShortFormShowsItsLoads() {
        var form = ShortForm.of(ScrewThread.parse("M14×1.5"), PropertyClass.CLASS_10_9, ThreadState.DRY, 140);
        assertThat(form.steps())
                .extracting(Step::what, Step::shown)
                .contains(tuple("least clamp load, dry", "40 kN"), tuple("most clamp load, dry", "50 kN"));
        assertThat(form.steps().get(2).value() * 1000).isCloseTo(50_000 / form.mostShareOfProof(), within(1e-6));
        assertThat(form.steps().getLast().value()).isCloseTo(100 * form.mostShareOfProof(), within(1e-9));
    }

    /** An inch thread by ASME B1.1, a metric one by ISO 898-1: the formula shown is that of the number. */
    @Test
    void theStressAreaIsShownByItsOwnStandard() {
        assertThat(area("1/2-20 UNF")).isEqualTo("0.7854 (d − 0.9743 P)², ASME B1.1, as published tables quote it");
        assertThat(area("M14×1.5")).isEqualTo("π/4 ((d2 + d3)/2)², ISO 898-1 (clause from memory)");
    }

    private static String area(String thread) {
        var load = ClampLoad.of(
                ScrewThread.parse(thread), PropertyClass.CLASS_10_9, SeatFace.flat(15, 20), FrictionBand.DRY, 100);
        var step = load.steps().stream()
                .filter(each -> each.what().startsWith("stress area"))
                .findFirst()
                .orElseThrow();
        return step.formula().replaceAll(", d3.*", "") + ", " + step.source();
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
        double proofKn = step(load, "proof load");
        assertThat(load.leastN() / 1000).isCloseTo(load.leastShareOfProof() * proofKn, within(1e-9));
        assertThat(load.mostN() / 1000).isCloseTo(load.mostShareOfProof() * proofKn, within(1e-9));
        assertThat(step(load, "least clamp load")).isCloseTo(load.leastN() / 1000, within(1e-9));
        assertThat(step(load, "most clamp load")).isCloseTo(load.mostN() / 1000, within(1e-9));
    }

    private static double step(ClampLoad load, String what) {
        return load.steps().stream()
                .filter(each -> each.what().startsWith(what))
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
                .asString()
                .containsAnyOf("past 90 % of its yield", "passes the proof load");
        double proofNm = 100 / clamp(thread, slippery, 100).mostShareOfProof();
        assertThat(clamp(thread, slippery, proofNm * 1.001).cautions())
                .anyMatch(caution -> caution.contains("passes the proof load"));
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
        assertThatThrownBy(() -> WrenchSetting.of(130, 450, 226, 180)).hasMessageContaining("more than half");
    }

    @Test
    void aWrenchThatIsDueIsNotTrusted() {
        var last = LocalDate.of(2026, 1, 10);
        assertThat(WrenchCalibration.of(last, 4999, last).cautions()).isEmpty();
        assertThat(WrenchCalibration.of(last, 5000, last).cautions())
                .containsExactly("The wrench is due for calibration: do not trust its setting.");
        assertThatThrownBy(() -> WrenchCalibration.of(last, -1, last)).hasMessageContaining("expected 0 or more");
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
        assertThat(PropertyClass.GRADE_8.source()).startsWith("SAE J429");
        assertThat(PropertyClass.CLASS_10_9.source()).startsWith("ISO 898-1");
    }

    @Test
    void theStateOfAThreadIsReadByItsWord() {
        for (var state : ThreadState.values()) {
            assertThat(ThreadState.parse(" " + state.word().toUpperCase(Locale.ROOT)))
                    .isEqualTo(state);
        }
        assertThatThrownBy(() -> ThreadState.parse("wet"))
                .hasMessage("state of the thread is \"wet\", expected one of dry oiled anti-seize");
    }
}
