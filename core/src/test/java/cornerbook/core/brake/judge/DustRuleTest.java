package cornerbook.core.brake.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.List;
import org.junit.jupiter.api.Test;

class DustRuleTest {
    @Test
    void anAxleIsOnePairHoweverManyOfItsBrakesWereWorkedOn() {
        assertThat(DustRule.pairsServiced(List.of())).isZero();
        assertThat(DustRule.pairsServiced(List.of(cleaned(Corner.LF, 1), cleaned(Corner.RF, 1))))
                .isEqualTo(1);
        assertThat(DustRule.pairsServiced(List.of(cleaned(Corner.LF, 1), cleaned(Corner.RR, 1))))
                .isEqualTo(2);
    }

    @Test
    void aLookIsNoWork() {
        assertThat(DustRule.pairsServiced(List.of(
                        cleaned(Corner.LF, 0), Cars.reading(Measure.PAD_MOVEMENT, Corner.RF, null, Spot.INNER, 1))))
                .isZero();
    }

    /** 29 CFR 1910.1001 App. F: the simple wet method up to five pairs of brakes a week. */
    @Test
    void theRuleAllowsFivePairsAWeek() {
        assertThat(DustRule.MOST_PAIRS_A_WEEK).isEqualTo(5);
    }

    private static Reading cleaned(Corner corner, double done) {
        return Cars.reading(Measure.BRACKET_CLEANED, corner, null, null, done);
    }
}
