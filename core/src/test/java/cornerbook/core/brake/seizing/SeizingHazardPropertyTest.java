package cornerbook.core.brake.seizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeizingHazardPropertyTest {
    private static final SeizingExposure CAR = new SeizingExposure(0.4, false, 15_000, 0.5);
    private static final SeizingHazard PRIOR = SeizingHazard.learn(List.of());

    /** The sentence of the prior: 4 % in the first year at the centre, 15 % in two. */
    @Test
    void priorSaysWhatItsNoteSays() {
        assertThat(PRIOR.chance(CAR, 0, 12).probability()).isCloseTo(0.04, within(0.005));
        assertThat(PRIOR.chance(CAR, 0, 24).probability()).isCloseTo(0.15, within(0.005));
    }

    @Test
    void chancesMultiplyOverTime() {
        double first = PRIOR.chance(CAR, 0, 6).probability();
        double second = PRIOR.chance(CAR, 6, 6).probability();
        assertThat(1 - PRIOR.chance(CAR, 0, 12).probability()).isCloseTo((1 - first) * (1 - second), within(1e-12));
        assertThat(second).as("the hazard grows with the time since service").isGreaterThan(first);
    }

    @Test
    void intervalBringsTheRiskThatWasChosen() {
        for (double risk : new double[] {0.01, 0.05, 0.2}) {
            double months = PRIOR.serviceIntervalMonths(CAR, risk, 1, new PadsOfACar());
            assertThat(PRIOR.chance(CAR, 0, months).probability()).isCloseTo(risk, within(1e-12));
            double eight = PRIOR.serviceIntervalMonths(CAR, risk, 8, new PadsOfACar());
            double one = PRIOR.chance(CAR, 0, eight).probability();
            var together = new PadsOfACar();
            for (int i = 0; i < 8; i++) {
                together.free(0, one);
            }
            assertThat(together.chance()).isCloseTo(risk, within(1e-12));
            assertThat(1 - Math.pow(1 - one, 8))
                    .as("pads of one car seize together more than each by itself would")
                    .isGreaterThan(risk);
        }
    }

    /** A car of which pads seized before is cleaned sooner, one whose pads stayed free for long is cleaned later. */
    @Test
    void whatTheCarsPadsDidBeforeMovesTheInterval() {
        var rusts = new PadsOfACar();
        var keeps = new PadsOfACar();
        for (int i = 0; i < 8; i++) {
            rusts.past(0.1, true);
            keeps.past(0.6, false);
        }
        double usual = PRIOR.serviceIntervalMonths(CAR, 0.2, 8, new PadsOfACar());
        assertThat(PRIOR.serviceIntervalMonths(CAR, 0.2, 8, rusts)).isLessThan(usual);
        assertThat(PRIOR.serviceIntervalMonths(CAR, 0.2, 8, keeps)).isGreaterThan(usual);
    }

    @Test
    void saltShortensAndFrictionLengthens() {
        double here = PRIOR.serviceIntervalMonths(CAR, 0.05, 8, new PadsOfACar());
        assertThat(PRIOR.serviceIntervalMonths(new SeizingExposure(0.6, false, 15_000, 0.5), 0.05, 8, new PadsOfACar()))
                .isLessThan(here);
        assertThat(PRIOR.serviceIntervalMonths(new SeizingExposure(0.4, false, 15_000, 0.9), 0.05, 8, new PadsOfACar()))
                .isGreaterThan(here);
    }

    @Test
    void seizedPadsRaiseTheChanceAndFreeOnesLowerIt() {
        double before = PRIOR.chance(CAR, 0, 12).probability();
        var seized = Collections.nCopies(4, new PadHistory(CensoredTime.before(12), CAR));
        var free = Collections.nCopies(40, new PadHistory(CensoredTime.notBy(24), CAR));
        var worse = SeizingHazard.learn(seized).chance(CAR, 0, 12);
        var better = SeizingHazard.learn(free).chance(CAR, 0, 12);
        assertThat(worse.probability()).isGreaterThan(before);
        assertThat(better.probability()).isLessThan(before);
        assertThat(worse.lower()).isLessThan(worse.probability());
        assertThat(worse.upper()).isGreaterThan(worse.probability());
    }

    @Test
    void whatCannotBeIsRefusedInASentence() {
        assertThatThrownBy(() -> new CensoredTime(5, 3))
                .hasMessage("time is after 5.0 and by 3.0, expected 0 <= after <= by, after finite, by above 0");
        assertThatThrownBy(() -> new SeizingExposure(1.2, false, 15_000, 0.5))
                .hasMessage("salt share is 1.2, expected 0 to 1");
        assertThatThrownBy(() -> PRIOR.serviceIntervalMonths(CAR, 0, 8, new PadsOfACar()))
                .hasMessageContaining("above 0 and below 1");
        assertThatThrownBy(() -> PRIOR.chance(CAR, 6, 0)).hasMessageContaining("after < by");
    }
}
