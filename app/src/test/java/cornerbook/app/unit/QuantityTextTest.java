package cornerbook.app.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.quantity.Quantities;
import cornerbook.words.UnitSystem;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {
    /** Factors of NIST SP 811, appendix B.8, by hand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "LF pressure set to 250 kPa, placard 240 kPa | LF pressure set to 36.3 psi, placard 34.8 psi",
                "4.0 to 5.2 mm | 5.0 to 6.6/32 in",
                "limit 1.6 mm | limit 2.0/32 in",
                "disc 22.4 mm, least 22.0 mm | disc 0.882 in, least 0.866 in",
                "runout 0.05 mm | runout 0.0020 in",
                "35 ± 5 km a day | 22 ± 3 mi a day",
                "0.14 mm per 1000 km | 0.28/32 in per 1 000 mi",
                "−20 °C, ±5 °C | −4 °F, ±9 °F",
                "120 N·m on the ground | 89 lbf·ft on the ground",
                "after 48 200 km | after 29 950 mi",
                "reading, written \"7.2 mm\" | reading, written \"7.2 mm\"",
                "thread M14×1.5 mm, 225/55R18 | thread M14×1.5 mm, 225/55R18",
                "5 mmx and 3 kPas | 5 mmx and 3 kPas"
            })
    void aSentenceIsInUnitsOfThePerson(String metric, String us) {
        assertThat(QuantityText.sentence(metric.replace("48 200", "48\u202f200"), UnitSystem.US)
                        .replace('\u202f', ' '))
                .isEqualTo(us);
        assertThat(QuantityText.sentence(metric, UnitSystem.METRIC)).isEqualTo(metric);
    }

    @Test
    void aPageIsChangedInItsTextAloneAndNeverInItsFields() {
        var page = QuantityText.page(
                "<p title=\"250 kPa\">250&nbsp;kPa</p><svg aria-label=\"limit 1.6 mm\"></svg><input value=\"250 kPa\">"
                        + "<span translate=\"no\">p = 250 kPa</span>",
                UnitSystem.US);
        assertThat(page)
                .isEqualTo(
                        "<p title=\"36.3 psi\">36.3&nbsp;psi</p><svg aria-label=\"limit 2.0/32 in\"></svg><input value=\"250 kPa\">"
                                + "<span translate=\"no\">p = 250 kPa</span>");
    }

    /** Every quantity comes back within the digits that are shown. */
    @Test
    void whatIsShownIsReadBack() {
        var random = new Random(811);
        for (int i = 0; i < 500; i++) {
            double kpa = 100 + 700 * random.nextDouble();
            assertBack("%.0f kPa".formatted(kpa), "kPa", 0.35);
            assertBack("%.0f N·m".formatted(20 + 300 * random.nextDouble()), "N·m", 0.68);
            assertBack("%.1f mm".formatted(13 + 40 * random.nextDouble()), "mm", 0.013);
            assertBack("%.2f mm".formatted(random.nextDouble()), "mm", 0.0013);
            assertBack("%.0f kg".formatted(4000 * random.nextDouble()), "kg", 0.23);
        }
    }

    private static void assertBack(String metric, String bookUnit, double tolerance) {
        var us = QuantityText.sentence(metric, UnitSystem.US).replace("\u202f", " ");
        assertThat(us).doesNotEndWith(bookUnit);
        assertThat(Quantities.parse(us, bookUnit))
                .as(metric + " as " + us)
                .isCloseTo(Quantities.parse(metric, bookUnit), within(tolerance));
    }
}
