package cornerbook.core.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class VinReferenceTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/vehicle/vin-check-digit.csv", numLinesToSkip = 1)
    void checkDigitOfTheRule(String written, char expected, double tolerance, String source) {
        var vin = Vin.parse(written);
        assertThat(vin.expectedCheckDigit()).as(source).isEqualTo(expected);
        assertThat(vin.checkDigitFits()).isTrue();
    }

    @Test
    void anotherCheckDigitIsReportedAndNotRefused() {
        var vin = Vin.parse("1g4ah59h 55g-118341");
        assertThat(vin.checkDigitFits()).isFalse();
        assertThat(vin.expectedCheckDigit()).isEqualTo('4');
    }

    /** Every weight is 2 to 10 and 11 is prime, so the digit finds each single slip between symbols of another value. */
    @Test
    void everySingleWrongDigitIsFound() {
        var right = "1G4AH59H45G118341";
        for (int position = 11; position < right.length(); position++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                var symbols = right.substring(0, position) + digit + right.substring(position + 1);
                assertThat(new Vin(symbols).checkDigitFits()).isEqualTo(symbols.equals(right));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"1G4AH59H45G11834, 16", "1G4AH59H45G1183410, 18"})
    void anotherLengthIsRefused(String written, int symbols) {
        assertThat(refusal(written)).isEqualTo(new CarSaid.VinLength(Quoted.of(written), symbols, 17));
    }

    @ParameterizedTest
    @CsvSource({"1G4AH59H45G11834O, O, 17", "1I4AH59H45G118341, I, 2"})
    void aSymbolThatIsNotUsedIsRefused(String written, String symbol, int position) {
        assertThat(refusal(written)).isEqualTo(new CarSaid.VinSymbol(Quoted.of(written), Quoted.of(symbol), position));
    }

    private static Said refusal(String written) {
        return catchThrowableOfType(Refused.class, () -> Vin.parse(written)).said();
    }
}
