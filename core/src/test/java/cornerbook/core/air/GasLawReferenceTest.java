package cornerbook.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ideal gas computed from exact definitions: 35 psi gauge from 70 to 60 °F falls 0.938 psi, 32 psi falls 0.882 psi. */
class GasLawReferenceTest {
    private static final double KPA_PER_PSI = 6.894757293168;

    @ParameterizedTest
    @CsvSource({"35, -0.938", "32, -0.882"})
    void tenDegreesFahrenheitColder(double psi, double changePsi) {
        double after = GasLaw.gaugePressureKpa(psi * KPA_PER_PSI, celsius(70), celsius(60)) / KPA_PER_PSI;
        assertThat(after - psi).isCloseTo(changePsi, within(0.0005));
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }
}
