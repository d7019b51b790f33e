package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class VisitRulesTest {
    @Test
    void aCorrectionMayStandBeforeOrAfterWhatItCorrects() {
        assertThat(check(volts("a", "b"), volts("b", null))).isEmpty();
        assertThat(check(volts("a", null), volts("b", "a"), volts("c", "b"))).isEmpty();
    }

    @Test
    void aReadingThatCorrectsItselfIsRefused() {
        assertThat(check(volts("a", "a")))
                .singleElement()
                .isEqualTo(new Problem(
                        "/visits/0/readings/0/corrects",
                        "reading a corrects itself, by way of a, expected an earlier reading"));
    }

    @Test
    void readingsThatCorrectEachOtherAreRefused() {
        assertThat(check(volts("a", "b"), volts("b", "c"), volts("c", "a")))
                .extracting(Problem::where)
                .containsExactly(
                        "/visits/0/readings/0/corrects",
                        "/visits/0/readings/1/corrects",
                        "/visits/0/readings/2/corrects");
    }

    private static List<Problem> check(Reading... readings) {
        var visit = new Visit(
                "v", Cars.AUTUMN, 48_000, null, Cars.at("S-"), Cars.at("S-"), List.of(readings), List.of(), null, null);
        return VisitRules.check(Cars.history(visit), Cars.AUTUMN);
    }

    private static Reading volts(String id, @Nullable String corrects) {
        return new Reading(
                id,
                Measure.BATTERY_VOLTAGE,
                null,
                null,
                null,
                12.6,
                "12.6 V",
                corrects,
                corrects == null ? null : "misread");
    }
}
