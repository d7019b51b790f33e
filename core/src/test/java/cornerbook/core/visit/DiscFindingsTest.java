package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.wear.DistancePerDay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faces and edges of the disc at RR of an invented car, new 28 mm and thick enough at 27.5 mm; its minimum is 26 mm. */
class DiscFindingsTest {
    /**
     * A pad that works wipes the rust of a night off; from 15 % of a face it does not, from 10 % it is looked at again
     * (common practice, no source).
     */
    @ParameterizedTest
    @CsvSource({
        "5, HOLDS, false",
        "9.9, HOLDS, false",
        "10, HOLDS, true",
        "14.9, HOLDS, true",
        "15, RUNS_OUT, false",
        "24, RUNS_OUT, false",
        "60, RUNS_OUT, false"
    })
    void rustSaysThatAPadDoesNotWorkFrom15Percent(double percent, Verdict verdict, boolean lookedAtAgain) {
        var disc = judge(rust(Spot.OUTER, percent), rust(Spot.INNER, 2));
        assertThat(disc.verdict()).isEqualTo(verdict);
        assertThat(disc.subject()).isEqualTo(new Subject(Subject.Part.DISC, Corner.RR, null, null));
        assertThat(disc.plainWords().contains("measured again at the next visit"))
                .isEqualTo(lookedAtAgain);
        assertThat(disc.probability() == null)
                .as("the chance of the thickness is not that of the rust")
                .isEqualTo(verdict != Verdict.HOLDS);
    }

    /** The worse face decides, and is named. */
    @Test
    void theRustierFaceIsNamed() {
        assertThat(evidence(judge(rust(Spot.OUTER, 3), rust(Spot.INNER, 40)), "under rust"))
                .isEqualTo("40 % of the inner face");
    }

    /** Scale: none, light, marked (the second step is where it counts): common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0, HOLDS", "1, HOLDS", "2, RUNS_OUT"})
    void lightPittingIsLeft(double place, Verdict verdict) {
        assertThat(judge(Cars.reading(Measure.DISC_PITTING, Corner.RR, null, Spot.INNER, place))
                        .verdict())
                .isEqualTo(verdict);
    }

    private static String evidence(Finding finding, String what) {
        return finding.evidence().stream()
                .filter(each -> each.what().equals(what))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static Reading rust(Spot face, double percent) {
        return Cars.reading(Measure.DISC_RUST, Corner.RR, null, face, percent);
    }

    private static Finding judge(Reading... more) {
        var readings = new ArrayList<>(List.of(more));
        readings.add(Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.5));
        return of(readings);
    }

    private static Finding of(List<Reading> readings) {
        return BrakeFindings.of(
                        Cars.vehicle(),
                        List.of(Cars.visit(readings)),
                        new DistancePerDay(28, 6),
                        Cars.AUTUMN.plusDays(180),
                        new LimitTable(Cars.LIMITS),
                        new ArrayList<>())
                .stream()
                .filter(finding -> finding.subject().part() == Subject.Part.DISC)
                .findFirst()
                .orElseThrow();
    }
}
