package cornerbook.core.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Facts;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenReadingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.017 mm|0.017",
                "17 µm|0.017",
                "27.312 27.308 27.301 27.318|0.017",
                "27,312; 27,308; 27,301; 27,318 mm|0.017",
                "1.0753 1.0751 1.0748 1.0755 in|0.01778"
            })
    void variationIsOneValueOrThePoints(String written, double variationMm) {
        assertThat(WrittenReading.valueOf(Measure.DISC_THICKNESS_VARIATION, written))
                .isCloseTo(variationMm, within(1e-9));
    }

    /** However they are parted, the points are the same. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "27.312 27.308 27.301 27.318 mm",
                "27.312 27.308 27.301 27.318",
                " 27.312  27.308\t27.301 27.318 mm ",
                "27.312;27.308; 27.301 ;27.318 mm"
            })
    void pointsMayBePartedInManyWays(String written) {
        assertThat(WrittenReading.findPoints(Measure.DISC_RUNOUT, written))
                .hasValue(List.of(27.312, 27.308, 27.301, 27.318));
    }

    @Test
    void pointsAreKeptInTheirOrder() {
        assertThat(WrittenReading.findPoints(Measure.DISC_THICKNESS_VARIATION, "27.312 27.308 27.301 27.318 mm"))
                .hasValue(List.of(27.312, 27.308, 27.301, 27.318));
        assertThat(WrittenReading.findPoints(Measure.DISC_THICKNESS_VARIATION, "0.017 mm"))
                .isEmpty();
        assertThat(WrittenReading.findPoints(Measure.DISC_RUNOUT, "0 -20 −10 30 µm"))
                .hasValueSatisfying(
                        dial -> assertThat(dial.get(2)).as("with a true minus").isCloseTo(-0.01, within(1e-12)));
    }

    @Test
    void pointsBeginAtTheStudThatIsNamed() {
        assertThat(WrittenReading.firstStud("stud 3: 0 12 30 11 µm")).isEqualTo(3);
        assertThat(WrittenReading.firstStud("Goujon 4 : 0 12 30 11 µm")).isEqualTo(4);
        assertThat(WrittenReading.firstStud("0 12 30 11 µm")).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DISC_RUNOUT|0.00 -0.02 0.01 0.03 mm|0.05",
                "HUB_RUNOUT|12 µm|0.012",
                "HUB_RUNOUT|Stud 3: 0 12 30 11 µm|0.03",
                "HUB_RUNOUT|goujon 3 : 0 0,012 0,03 0,011|0.03",
                "PAD_MOVEMENT|Tight|1",
                "PAD_MOVEMENT|2|2",
                "PAD_EDGE_LIFT|slight|1",
                "PAD_WEAR_INDICATOR|touches the disc|2",
                "PEDAL_PUMPED|done|1",
                "DISC_RUST|15 %|15"
            })
    void eachMeasureIsWrittenInItsOwnWay(Measure measure, String written, double value) {
        assertThat(WrittenReading.valueOf(measure, written)).isCloseTo(value, within(1e-9));
    }

    /** Pieces of points, studs and units in any order: a value, or one sentence, and never a fault. */
    @Test
    void whateverIsTypedIsAValueOrOneSentence() {
        var pieces = List.of(
                "stud", "Stud 3:", "1:", ":", ";", " ", "\t", "0.01", "-", "−20", "+", ",", ".", "µm", "mm", "°", "in",
                "/", "9/32", "\u00a0", "\u2028", "99", "1e9", "x", "é", "\"");
        var random = new Random(7);
        for (int i = 0; i < 200_000; i++) {
            var written = random.ints(random.nextInt(9), 0, pieces.size())
                    .mapToObj(pieces::get)
                    .collect(Collectors.joining());
            for (var measure : List.of(Measure.DISC_RUNOUT, Measure.DISC_THICKNESS_VARIATION)) {
                try {
                    assertThat(WrittenReading.valueOf(measure, written))
                            .as(written)
                            .isFinite();
                    assertThat(WrittenReading.firstStud(written)).isBetween(1, 99);
                } catch (IllegalArgumentException e) {
                    assertThat(e).as(written).isInstanceOf(Refused.class);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DISC_THICKNESS_VARIATION|27.3 27.3 x 27.3",
                "DISC_RUNOUT|stud 1:;",
                "DISC_RUNOUT|; ;",
                "HUB_RUNOUT|stud 3: mm",
                "DISC_RUNOUT|stud 0: 0.01 0.02 0.03 0.01",
                "DISC_THICKNESS_VARIATION|stud 3: 27.3 27.3 27.3 27.3"
            })
    void whatIsNoNumberIsRefused(Measure measure, String written) {
        assertThat(refusal(measure, written)).isInstanceOf(QuantitySaid.NotAQuantity.class);
    }

    @Test
    void pointsOfAMeasureThatHasNoneAreRefused() {
        assertThat(refusal(Measure.PAD_THICKNESS, "7.1 7.2 7.3 7.4 mm"))
                .isInstanceOfSatisfying(
                        QuantitySaid.OtherUnit.class,
                        other -> assertThat(other.written()).isEqualTo(Quoted.of("7.1 7.2 7.3 7.4 mm")));
    }

    @Test
    void pointsThatAreTooFewAreRefused() {
        assertThat(refusal(Measure.DISC_THICKNESS_VARIATION, "27.31 27.30 mm"))
                .isEqualTo(new CarSaid.PointsAroundDisc(2, 4, 36));
        assertThat(refusal(Measure.DISC_RUNOUT, "0.01 0.02 0.03")).isEqualTo(new CarSaid.PointsAroundDisc(3, 4, 36));
    }

    @ParameterizedTest
    @CsvSource({"PAD_MOVEMENT, loose, free, tight, seized", "PAD_MOVEMENT, 1.5, free, tight, seized"})
    void aWordThatIsNotOnTheScaleIsRefused(Measure measure, String written, String mild, String middle, String grave) {
        assertThat(refusal(measure, written))
                .isEqualTo(new CarSaid.NotOnScale(Quoted.of(written), Facts.texts(mild, middle, grave)));
        assertThat(refusal(Measure.PEDAL_PUMPED, "maybe"))
                .isEqualTo(new CarSaid.NotOnScale(Quoted.of("maybe"), Facts.texts("not done", "done")));
    }

    private static Said refusal(Measure measure, String written) {
        return catchThrowableOfType(Refused.class, () -> WrittenReading.valueOf(measure, written))
                .said();
    }
}
