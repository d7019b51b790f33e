package cornerbook.core.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
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
}
