package cornerbook.core.brake.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.say.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BrakeFluidReferenceTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/brake/fluid.csv", numLinesToSkip = 1)
    void boilingPointsOfTheRule(String label, double dryC, double wetC, double toleranceC, String source) {
        var fluid = BrakeFluid.parse(label);
        assertThat(fluid.minimumDryBoilingPointC()).as(source).isCloseTo(dryC, within(toleranceC));
        assertThat(fluid.minimumWetBoilingPointC()).as(source).isCloseTo(wetC, within(toleranceC));
    }

    @Test
    void fluidIsJudgedAgainstItsOwnGrade() {
        assertThat(BrakeFluid.DOT_4.boilsTooEarly(154)).isTrue();
        assertThat(BrakeFluid.DOT_4.boilsTooEarly(155)).isFalse();
        assertThat(BrakeFluid.DOT_3.boilsTooEarly(154)).isFalse();
        assertThatThrownBy(() -> BrakeFluid.DOT_4.boilsTooEarly(20)).hasMessageContaining("expected 50 to 350 °C");
    }

    @Test
    void aGradeThatIsNoneIsRefused() {
        assertThatThrownBy(() -> BrakeFluid.parse("DOT 6"))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.said())
                                .isEqualTo(new NoSuchGrade("\"DOT 6\"", "DOT 3, DOT 4, DOT 5, DOT 5.1")));
    }
}
