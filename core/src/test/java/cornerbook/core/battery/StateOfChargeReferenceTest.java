package cornerbook.core.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StateOfChargeReferenceTest {
    /** BCI table of open-circuit voltage at 80 °F for flooded batteries. */
    @ParameterizedTest
    @CsvSource({"12.65, 1.00", "12.45, 0.75", "12.24, 0.50", "12.06, 0.25", "11.89, 0.00"})
    void pointsOfTheTable(double volts, double share) {
        assertThat(StateOfCharge.ofFloodedLeadAcid(volts)).isCloseTo(share, within(0.005));
    }

    @Test
    void aVoltageThatIsHeldUpIsRefused() {
        assertThatThrownBy(() -> StateOfCharge.ofFloodedLeadAcid(13.8))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("13.8 V");
    }
}
