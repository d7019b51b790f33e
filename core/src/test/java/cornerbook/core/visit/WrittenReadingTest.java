package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    @Test
    void pointsAreKeptForTheThinnest() {
        var points = WrittenReading.findPoints(Measure.DISC_THICKNESS_VARIATION, "27.312 27.308 27.301 27.318 mm");
        assertThat(points)
                .hasValueSatisfying(disc -> assertThat(disc.thinnestMm()).isEqualTo(27.301));
        assertThat(WrittenReading.findPoints(Measure.DISC_THICKNESS_VARIATION, "0.017 mm"))
                .isEmpty();
    }

    @Test
    void otherMeasuresAreOneValue() {
        assertThat(WrittenReading.valueOf(Measure.PAD_MOVEMENT, "tight")).isEqualTo(1);
        assertThatThrownBy(() -> WrittenReading.valueOf(Measure.DISC_RUNOUT, "0.01 0.02 0.03 0.04 mm"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WrittenReading.valueOf(Measure.DISC_THICKNESS_VARIATION, "27.3 27.3 x 27.3"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
