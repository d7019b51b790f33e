package cornerbook.core.brake.seizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against R's survfit, against a closed form, and against the Kaplan–Meier curve where nothing but the right is censored. */
class TurnbullEstimateReferenceTest {
    /** survival.R lets R's self-consistency run until its curve moves by less than 1e-10 a round. */
    private static final double SETTLED = 1e-6;

    @ParameterizedTest
    @ValueSource(strings = {"shock", "nist", "cracks", "wheels", "pads"})
    void curveEqualsSurvfit(String set) {
        var reference = SurvivalReference.of(set);
        var estimate = TurnbullEstimate.of(reference.times());
        reference.results().forEach((what, value) -> {
            if (what.startsWith("turnbull@")) {
                double time = Double.parseDouble(what.substring("turnbull@".length()));
                assertThat(estimate.survivalAfter(time)).as(what).isCloseTo(value, within(SETTLED));
            }
        });
    }

    /**
     * Where each part is looked at once, the estimate is isotonic regression (Groeneboom and Wellner 1992): the failed share of
     * the turbine wheels, with 10 and 14, 26 and 30, and 38 and 42 hundred hours pooled, where it would fall.
     */
    @Test
    void oneLookEachIsIsotonicRegression() {
        var estimate = TurnbullEstimate.of(SurvivalReference.of("wheels").times());
        assertThat(1 - estimate.survivalAfter(4)).isCloseTo(0, within(1e-6));
        assertThat(1 - estimate.survivalAfter(14)).isCloseTo(6.0 / 86, within(1e-6));
        assertThat(1 - estimate.survivalAfter(18)).isCloseTo(7.0 / 73, within(1e-6));
        assertThat(1 - estimate.survivalAfter(22)).isCloseTo(5.0 / 30, within(1e-6));
        assertThat(1 - estimate.survivalAfter(30)).isCloseTo(18.0 / 81, within(1e-6));
        assertThat(1 - estimate.survivalAfter(34)).isCloseTo(6.0 / 13, within(1e-6));
        assertThat(1 - estimate.survivalAfter(42)).isCloseTo(43.0 / 74, within(1e-6));
        assertThat(1 - estimate.survivalAfter(46)).isCloseTo(21.0 / 36, within(1e-6));
    }

    /** Freireich et al. 1963, treated leukaemia patients to week 10: S(6) = 0.857, S(7) = 0.807, S(10) = 0.753 in the printed tables. */
    @Test
    void rightCensoredAloneIsKaplanMeier() {
        var times = List.of(
                CensoredTime.exactly(6),
                CensoredTime.exactly(6),
                CensoredTime.exactly(6),
                CensoredTime.notBy(6),
                CensoredTime.exactly(7),
                CensoredTime.notBy(9),
                CensoredTime.exactly(10),
                CensoredTime.notBy(10),
                CensoredTime.notBy(11),
                CensoredTime.exactly(13),
                CensoredTime.exactly(16),
                CensoredTime.notBy(17),
                CensoredTime.notBy(19),
                CensoredTime.notBy(20),
                CensoredTime.exactly(22),
                CensoredTime.exactly(23),
                CensoredTime.notBy(25),
                CensoredTime.notBy(32),
                CensoredTime.notBy(32),
                CensoredTime.notBy(34),
                CensoredTime.notBy(35));
        var estimate = TurnbullEstimate.of(times);
        assertThat(estimate.survivalAfter(6)).isCloseTo(0.857, within(0.5e-3));
        assertThat(estimate.survivalAfter(7)).isCloseTo(0.807, within(0.5e-3));
        assertThat(estimate.survivalAfter(10)).isCloseTo(0.753, within(0.5e-3));
        assertThat(estimate.survivalAfter(23)).isCloseTo(0.448, within(0.5e-3));
    }
}
