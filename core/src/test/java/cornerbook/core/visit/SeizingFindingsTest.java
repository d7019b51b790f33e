package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeizingFindingsTest {
    private static final Limit RISK = Cars.limit(Limit.Kind.SEIZING_RISK, null, 0.1);
    private static final LocalDate FIRST = LocalDate.of(2024, 10, 20);

    @Test
    void withoutAServiceInTheBookThereIsNoChance() {
        var notJudged = new ArrayList<String>();
        assertThat(SeizingFindings.of(
                        Cars.vehicle(), List.of(visit(0, 0)), FIRST.plusMonths(6), 40, Knowledge.NONE, RISK, notJudged))
                .isEmpty();
        assertThat(notJudged).containsExactly("seizing of pads: no cleaning of their guides is in the book");
    }

    @Test
    void freshGuidesHoldAndOldOnesRunOut() {
        var fresh = finding(serviced(0));
        assertThat(fresh.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(fresh.horizon()).isAfter(FIRST.plusMonths(6));
        var old = finding(serviced(0), visit(12, 0));
        assertThat(old.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(old.probability()).isLessThan(fresh.probability());
        assertThat(old.plainWords()).contains("cleaned and lubricated");
        var unseen = at(FIRST.plusMonths(36), List.of());
        assertThat(finding(serviced(0), unseen).verdict()).isEqualTo(Verdict.SPENT);
    }

    @Test
    void cleaningStartsTheClockAgain() {
        var again = finding(serviced(0), serviced(12));
        assertThat(again.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(again.evidence())
                .anyMatch(e -> e.what().equals("guides cleaned") && e.value().equals("at this visit"));
    }

    /** One pad that is found seized leaves seven, and makes the chance of the others greater. */
    @Test
    void aSeizedPadTeaches() {
        var free = finding(serviced(0), visit(6, 0));
        var seized = finding(serviced(0), visit(6, 2));
        assertThat(seized.title()).contains("one of 7 pads");
        assertThat(seized.probability()).isLessThan(free.probability());
    }

    @Test
    void correctionsCount() {
        var wrong = Cars.reading(Measure.PAD_MOVEMENT, Corner.RR, null, Spot.OUTER, 2);
        var right = new Reading(
                "r-right", Measure.PAD_MOVEMENT, Corner.RR, null, Spot.OUTER, 0, "free", wrong.id(), "mistyped");
        var visit = at(FIRST.plusMonths(6), List.of(wrong, right));
        assertThat(finding(serviced(0), visit).title()).contains("one of 8 pads");
    }

    private static Finding finding(Visit... visits) {
        return SeizingFindings.of(
                        Cars.vehicle(),
                        List.of(visits),
                        visits[visits.length - 1].date().plusMonths(6),
                        40,
                        Knowledge.NONE,
                        RISK,
                        new ArrayList<>())
                .orElseThrow();
    }

    /** All pads move, but for the outer one of the right rear. */
    private static Visit visit(int month, double rightRearOuter) {
        var readings = new ArrayList<Reading>();
        for (var corner : Corner.values()) {
            for (var spot : List.of(Spot.INNER, Spot.OUTER)) {
                double movement = corner == Corner.RR && spot == Spot.OUTER ? rightRearOuter : 0;
                readings.add(Cars.reading(Measure.PAD_MOVEMENT, corner, null, spot, movement));
            }
        }
        return at(FIRST.plusMonths(month), readings);
    }

    private static Visit serviced(int month) {
        var readings = new ArrayList<>(visit(month, 0).readings());
        for (var corner : Corner.values()) {
            readings.add(Cars.reading(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null, null, 0));
        }
        return at(FIRST.plusMonths(month), readings);
    }

    private static Visit at(LocalDate date, List<Reading> readings) {
        return new Visit(
                "v-" + date, date, 40_000, null, Cars.at("S-"), Cars.at("S-"), readings, List.of(), null, null);
    }
}
