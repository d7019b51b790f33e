package cornerbook.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantitiesReferenceTest {
    /** NIST SP 811 (2008), appendix B, from exact definitions: in = 25.4 mm, lb = 0.45359237 kg, lbf = 4.4482216152605 N. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 in | mm | 25.4",
                "9/32 in | mm | 7.14375",
                "1 1/4 in | mm | 31.75",
                "1 psi | kPa | 6.894757293168",
                "32 psi | kPa | 220.632233381376",
                "2.3 bar | kPa | 230",
                "1 lbf·ft | N·m | 1.3558179483314",
                "98 ft-lb | N·m | 132.8701589364772",
                "1 lbf·in | N·m | 0.1129848290276",
                "1 lb | kg | 0.45359237",
                "1 mi | km | 1.609344",
                "0 °F | °C | -17.7777777777777778",
                "18 °F | °C | -7.7777777777777778",
                "-8 °C | °C | -8",
                "−8 °C | °C | -8",
                "50 °F | °C | 10",
                "12.4 V | V | 12.4",
                "12400 mV | V | 12.4",
                "48 200 km | km | 48200",
                "48,200 km | km | 48200",
                "26,000 mi | km | 41842.944",
                "48\u00a0200\u202fkm | km | 48200",
                "0,500 km | km | 0.5",
                "1,000 CCA | A | 1000",
                "2,100 kg | kg | 2100",
                "0,030 mm | mm | 0.03",
                "130 Nm | N·m | 130",
                "130 N-m | N·m | 130",
                "9/32″ | mm | 7.14375",
                "20 ºC | °C | 20",
                "5,5 mm | mm | 5.5",
                "1 lbf | N | 4.4482216152605",
                "5280 ft | m | 1609.344",
                "62 mph | km/h | 99.779328",
                "50 mA | A | 0.05",
                "70 Ah | A·h | 70",
                "45° | ° | 45",
                "7.2 | mm | 7.2",
                "3.5 % | % | 3.5",
                "2 studs | studs | 2",
                "9/32 po | mm | 7.14375",
                "32 lb/po² | kPa | 220.632233381376",
                "98 lb·pi | N·m | 132.8701589364772",
                "2 goujons | studs | 2"
            })
    void readsWhatPeopleWrite(String text, String bookUnit, double expected) {
        assertThat(Quantities.parse(text, bookUnit))
                .isCloseTo(expected, within(1e-12 * Math.max(1, Math.abs(expected))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "32 furlong | kPa | OtherUnit",
                "deep | mm | NotAQuantity",
                "3/0 in | mm | DividesByZero",
                "NaN mm | mm | NotAQuantity",
                "7 8 mm | mm | NotAQuantity",
                "32 psi | mm | OtherUnit",
                "9/32 | mm | FractionWithoutUnit",
                "48.200 km | km | TwoWays",
                "Infinity | km | NotAQuantity",
                "1e5 km | km | OtherUnit",
                "loose | studs | NotAQuantity"
            })
    void refusesTheRestInOneSentence(String text, String bookUnit, String why) {
        assertThat(refusal(text, bookUnit).getClass().getSimpleName()).isEqualTo(why);
    }

    @Test
    void aRefusalNamesWhatWasWrittenAndWhatMayBe() {
        assertThat(refusal("32 furlong", "kPa"))
                .isEqualTo(new QuantitySaid.OtherUnit(
                        Quoted.of("32 furlong"), Quoted.of("furlong"), units("kPa", "bar", "psi", "MPa")));
        assertThat(refusal("loose", "studs"))
                .isEqualTo(new QuantitySaid.NotAQuantity(Quoted.of("loose"), units("studs")));
        assertThat(refusal("1e5 km", "km"))
                .isEqualTo(new QuantitySaid.OtherUnit(Quoted.of("1e5 km"), Quoted.of("e5 km"), units("km", "mi")));
    }

    private static List<QuantitySaid.UnitWord> units(String... units) {
        return Arrays.stream(units).map(QuantitySaid.UnitWord::new).toList();
    }

    private static Said refusal(String text, String bookUnit) {
        return catchThrowableOfType(Refused.class, () -> Quantities.parse(text, bookUnit))
                .said();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7.23 | mm | 7.2 mm",
                "-8 | °C | −8 °C",
                "-0.3 | °C | 0 °C",
                "-0.0004 | mm | 0.000 mm",
                "12.648 | V | 12.65 V",
                "0.03 | mm | 0.030 mm",
                "15.4 | % | 15 %"
            })
    void showsWithUnit(double value, String bookUnit, String shown) {
        assertThat(Quantities.show(value, bookUnit)).isEqualTo(shown);
    }

    @Test
    void aNumberBeyondTheDoublesIsRefused() {
        var written = "9".repeat(400) + " km";
        assertThat(refusal(written, "km")).isEqualTo(new QuantitySaid.TooLarge(Quoted.of(written)));
        assertThatThrownBy(() -> Quantities.show(Double.NaN, "mm")).hasMessageContaining("expected a finite number");
    }
}
