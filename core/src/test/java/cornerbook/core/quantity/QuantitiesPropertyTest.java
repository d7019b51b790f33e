package cornerbook.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.say.Refused;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesPropertyTest {
    /** What is shown can be read again, and gives the value to within the digits shown. */
    @ParameterizedTest
    @CsvSource({
        "mm, 0, 60, 0.05",
        "kPa, 0, 1000, 0.5",
        "N·m, 0, 1000, 0.5",
        "°C, -50, 350, 0.5",
        "V, 0, 18, 0.005",
        "A, 0, 2000, 0.5",
        "km, 0, 900000, 0.5",
        "kg, 0, 4000, 0.5"
    })
    void whatIsShownIsReadBack(String bookUnit, double lowest, double highest, double halfDigit) {
        var random = new SplittableRandom(20_260_101);
        for (int i = 0; i < 500; i++) {
            double value = random.nextDouble(lowest, highest);
            double again = Quantities.parse(Quantities.show(value, bookUnit), bookUnit);
            assertThat(again).isCloseTo(value, within(halfDigit * (1 + 1e-9)));
            assertThat(Quantities.show(again, bookUnit)).isEqualTo(Quantities.show(value, bookUnit));
        }
    }

    /** Digits as people write them give what the JDK reads, to the last bit, however many there are. */
    @Test
    void digitsAreReadAsTheJdkReadsThem() {
        var random = new SplittableRandom(20_261_201);
        for (int i = 0; i < 20_000; i++) {
            var digits = random.ints(random.nextInt(1, 20), 0, 10)
                    .mapToObj(Integer::toString)
                    .collect(Collectors.joining());
            int whole = random.nextInt(1, digits.length() + 1);
            var written =
                    whole == digits.length() ? digits : digits.substring(0, whole) + "." + digits.substring(whole);
            assertThat(Quantities.parse(written + " mm", "mm")).isEqualTo(Double.parseDouble(written));
            assertThat(Quantities.parse(written.replace('.', ','), "mm")).isEqualTo(Double.parseDouble(written));
        }
    }

    /** Every number there is, written with all its digits, is read back as the very same; a minus before zero is left out. */
    @ParameterizedTest
    @ValueSource(strings = {"mm", "m", "kPa", "N·m", "N", "°C", "V", "A", "A·h", "km", "kg", "%"})
    void whatIsWrittenIsReadBackToTheLastBit(String bookUnit) {
        var random = new SplittableRandom(20_260_104);
        var values = DoubleStream.concat(
                DoubleStream.of(
                        -0.0,
                        1e-300,
                        -1e-300,
                        1e300,
                        Double.MIN_VALUE,
                        Double.MAX_VALUE,
                        1.234,
                        -12.345,
                        999.001,
                        1000),
                DoubleStream.concat(
                        random.longs(2000).mapToDouble(Double::longBitsToDouble).filter(Double::isFinite),
                        random.ints(2000, 0, 2_000_000).mapToDouble(thousandths -> thousandths / 1000.0)));
        values.forEach(value -> assertThat(Quantities.parse(Quantities.write(value, bookUnit), bookUnit))
                .isEqualTo(value == 0 ? 0.0 : value));
    }

    /** The plainest form is read by a shorter way than any other: with a sign before it, or a blank more, the same text goes the long one. */
    @ParameterizedTest
    @ValueSource(
            strings = {"mm", "m", "kPa", "N·m", "N", "°C", "°", "V", "A", "A·h", "km", "km/h", "g", "kg", "%", "studs"})
    void theShortWayReadsWhatTheLongOneDoes(String bookUnit) {
        var random = new SplittableRandom(20_260_105);
        for (int i = 0; i < 500; i++) {
            var separator = random.nextBoolean() ? "." : ",";
            var digits = i % 3 == 0
                    ? "" + random.nextInt(100_000)
                    : random.nextInt(10_000) + separator + random.nextInt(100_000);
            for (var written : List.of(digits, digits + bookUnit, digits + " " + bookUnit)) {
                assertThat(read(written, bookUnit))
                        .as("%s in %s", written, bookUnit)
                        .isEqualTo(read("+" + written, bookUnit))
                        .isEqualTo(read(" " + written, bookUnit));
            }
        }
    }

    /** Empty where it is refused. */
    private static OptionalDouble read(String written, String bookUnit) {
        try {
            return OptionalDouble.of(Quantities.parse(written, bookUnit));
        } catch (Refused refused) {
            return OptionalDouble.empty();
        }
    }

    /** What is taken to another unit is read back. */
    @ParameterizedTest
    @CsvSource({"kPa, psi", "N·m, lbf·ft", "°C, °F", "mm, in", "kg, lb", "m, ft", "N, kN", "km/h, mph", "A, mA"})
    void anotherUnitIsReadBack(String bookUnit, String unit) {
        var random = new SplittableRandom(20_260_103);
        for (int i = 0; i < 200; i++) {
            double value = random.nextDouble(0, 300);
            var written = new java.math.BigDecimal(Quantities.in(unit, value, bookUnit)).toPlainString() + " " + unit;
            assertThat(Quantities.parse(written, bookUnit)).isCloseTo(value, within(1e-9));
        }
    }

    /** A value is the same whichever unit it was written in. */
    @ParameterizedTest
    @CsvSource({
        "mm, in, 25.4",
        "kPa, bar, 100",
        "N·m, lbf·ft, 1.3558179483314004",
        "kg, lb, 0.45359237",
        "km, mi, 1.609344"
    })
    void theUnitThatWasWrittenDoesNotMatter(String bookUnit, String written, double factor) {
        var random = new SplittableRandom(20_260_102);
        for (int i = 0; i < 500; i++) {
            int value = random.nextInt(1, 1000);
            assertThat(Quantities.parse(value + " " + written, bookUnit))
                    .isCloseTo(Quantities.parse(value + " " + bookUnit, bookUnit) * factor, within(1e-9 * value));
        }
    }

    /** A zero with a sign is another number to a record than the zero that the book gives back. */
    @ParameterizedTest
    @CsvSource({"-0, mm", "−0.00 in, mm", "-0 psi, kPa"})
    void nothingHasNoSign(String written, String bookUnit) {
        assertThat(Double.valueOf(Quantities.parse(written, bookUnit))).isEqualTo(Double.valueOf(0.0));
    }
}
