package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BrakeFindingsTest {
    @Test
    void unevenPadsWithStuckPinsNameThePins() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 5.5),
                Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.RR, null, null, 2));
        assertThat(pads.plainWords()).contains("outer pad is worn more", "looked at first: seized slide pins");
        assertThat(pads.evidence())
                .filteredOn(evidence -> evidence.what().equals("likely cause"))
                .singleElement()
                .satisfies(cause -> {
                    assertThat(cause.value()).startsWith("seized slide pins ");
                    assertThat(cause.how()).contains("outer pad thinner", "slide pins stuck");
                });
    }

    @Test
    void evenFreePadsNameNoCause() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 8.1));
        assertThat(pads.plainWords()).doesNotContain("first");
        assertThat(pads.evidence()).noneMatch(evidence -> evidence.what().equals("likely cause"));
    }

    @Test
    void thePointsOfADiscGiveItsVariationAndItsThinnest() {
        var disc = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 26.1),
                variation("26.012 26.001 25.990 26.004 mm"));
        assertThat(disc.verdict()).as("below 26 mm at one point").isEqualTo(Verdict.SPENT);
        assertThat(disc.evidence())
                .anyMatch(e ->
                        e.what().equals("thinnest of 4 points") && e.value().equals("25.990 mm"))
                .anyMatch(
                        e -> e.what().equals("thickness variation") && e.value().startsWith("0.022 mm"));
        var wobbling = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.0),
                variation("27.012 27.001 26.990 27.004 mm"));
        assertThat(wobbling.verdict()).as("limit 0.015 mm").isEqualTo(Verdict.RUNS_OUT);
    }

    private static Reading variation(String written) {
        var measure = Measure.DISC_THICKNESS_VARIATION;
        return new Reading(
                "r-variation",
                measure,
                Corner.RR,
                null,
                null,
                WrittenReading.valueOf(measure, written),
                written,
                null,
                null);
    }

    private static Finding of(Subject.Part part, Reading... readings) {
        var visit = new Visit(
                "v", Cars.AUTUMN, 1, null, Cars.at("S-"), Cars.at("S-"), List.of(readings), List.of(), null, null);
        return BrakeFindings.of(
                        Cars.vehicle(), new CurrentReadings(visit), new LimitTable(Cars.LIMITS), new ArrayList<>())
                .stream()
                .filter(finding -> finding.subject().part() == part)
                .findFirst()
                .orElseThrow();
    }
}
