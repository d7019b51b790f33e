package cornerbook.app.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.quantity.Quantities;
import cornerbook.words.UnitSystem;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is shown in either system is read back in either system, within the digits that are shown. */
class UnitSystemPropertyTest {
    private static final long SEED = 811;

    /** The factors are those of NIST SP 811, appendix B.8: half of the last digit shown, in the book's unit. */
    @ParameterizedTest
    @CsvSource({
        "mm, 30, 2000, 1.27",
        "kPa, 100, 800, 0.3448",
        "N·m, 20, 400, 0.678",
        "kg, 100, 4000, 0.2268",
        "°C, -50, 60, 0.278",
        "km, 1, 300000, 0.8047",
        "km/h, 10, 300, 0.8047",
        "V, 8, 15, 0.005"
    })
    void whatIsShownIsReadBack(String bookUnit, double lowest, double highest, double halfDigit) {
        var random = new Random(SEED);
        for (int i = 0; i < 500; i++) {
            double value = lowest + (highest - lowest) * random.nextDouble();
            for (var system : UnitSystem.values()) {
                assertThat(Quantities.parse(system.show(value, bookUnit), bookUnit))
                        .isCloseTo(value, within(Math.max(halfDigit, 0.5)));
                var bare = system.field(value, bookUnit);
                assertThat(Quantities.parse(system.withUnit(bare, bookUnit), bookUnit))
                        .as(bare)
                        .isCloseTo(value, within(0.013));
                assertThat(Quantities.parse(system.withUnit(UnitSystem.US.show(value, bookUnit), bookUnit), bookUnit))
                        .as("a unit that is written counts in either system")
                        .isCloseTo(value, within(halfDigit * 1.001));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "98, N·m, 98 lbf·ft",
        "32, kPa, 32 psi",
        "9/32 in, mm, 9/32 in",
        "32 psi, kPa, 32 psi",
        "-5, °C, -5 °F",
        "12.6, V, 12.6 V",
        "220 kPa, kPa, 220 kPa"
    })
    void aBareNumberGetsThePersonsUnit(String typed, String bookUnit, String meant) {
        assertThat(UnitSystem.US.withUnit(typed, bookUnit)).isEqualTo(meant);
    }
}
