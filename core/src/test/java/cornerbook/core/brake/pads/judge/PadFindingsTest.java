package cornerbook.core.brake.pads.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.BrakeFindings;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.car.CarSaid;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pads at RR of an invented car: new 11 mm, manufacturer's minimum 3 mm, legal minimum 1.6 mm (invented). What is uneven is common
 * practice, no source: 2 mm between the pads, 1 mm more than at the visit before, 1 mm along a pad.
 */
class PadFindingsTest {
    @ParameterizedTest
    @CsvSource({"8.5, 6.5, RUNS_OUT", "8.5, 6.6, HOLDS", "6.5, 8.5, RUNS_OUT", "6.6, 8.5, HOLDS", "8, 5.7, RUNS_OUT"})
    void padsThatDifferByTwoMillimetresDoNotBothWork(double innerMm, double outerMm, Verdict verdict) {
        var pads = judge(visit("v", pad(Spot.INNER, innerMm), pad(Spot.OUTER, outerMm)));
        assertThat(pads.verdict()).isEqualTo(verdict);
        assertThat(pads.subject()).isEqualTo(new Subject(Subject.Part.PAD, Corner.RR, null, null));
        if (verdict == Verdict.RUNS_OUT) {
            assertThat(sentences(pads)).contains(new PadSaid.WornMore(innerMm < outerMm ? Spot.INNER : Spot.OUTER));
            assertThat(pads.horizon()).as("uneven has no date").isNull();
            assertThat(pads.probability()).isNull();
        } else {
            assertThat(sentences(pads)).doesNotHaveAnyElementsOfTypes(PadSaid.WornMore.class);
        }
    }

    @ParameterizedTest
    @CsvSource({"8, 7, RUNS_OUT", "8, 7.1, HOLDS", "7, 8, RUNS_OUT", "8.2, 7, RUNS_OUT", "8, 8, HOLDS"})
    void aPadWornToAWedgeFromOneMillimetre(double leadingMm, double trailingMm, Verdict verdict) {
        var pads = judge(visit(
                "v",
                pad(Spot.INNER, leadingMm),
                Cars.reading(Measure.PAD_THICKNESS_TRAILING, Corner.RR, null, Spot.INNER, trailingMm),
                pad(Spot.OUTER, 7.5)));
        assertThat(pads.verdict()).isEqualTo(verdict);
        assertThat(sentences(pads).contains(new PadSaid.Wedge())).isEqualTo(verdict == Verdict.RUNS_OUT);
    }

    /** Half a millimetre apart last time, now 1.5 mm: less than two, and yet one pad has stopped working. */
    @ParameterizedTest
    @CsvSource({"6.5, RUNS_OUT", "6.6, HOLDS", "6.2, RUNS_OUT"})
    void aDifferenceThatGrewByAMillimetreIsLookedInto(double outerMm, Verdict verdict) {
        var before = visit("before", pad(Spot.INNER, 8.5), pad(Spot.OUTER, 8));
        assertThat(judge(before, visit("v", pad(Spot.INNER, 8), pad(Spot.OUTER, outerMm)))
                        .verdict())
                .isEqualTo(verdict);
    }

    /** A visit at which only one pad was read tells nothing of the difference; the one before it still does. */
    @Test
    void theDifferenceIsHeldAgainstTheLastVisitThatReadBoth() {
        var before = visit("before", pad(Spot.INNER, 8.5), pad(Spot.OUTER, 8));
        var half = visit("half", pad(Spot.INNER, 8.2));
        var now = visit("v", pad(Spot.INNER, 8), pad(Spot.OUTER, 6.5));
        assertThat(judge(before, half, now).verdict()).isEqualTo(Verdict.RUNS_OUT);
    }

    /** New pads of whatever state start level: the difference of the old ones is gone. */
    @Test
    void newPadsInBetweenBeginAnew() {
        var before = visit("before", pad(Spot.INNER, 8.5), pad(Spot.OUTER, 8));
        var replaced = visit("replaced", Cars.reading(Measure.PADS_REPLACED, Corner.RR, null, null, 1));
        var now = visit("v", pad(Spot.INNER, 10.8), pad(Spot.OUTER, 9.3));
        assertThat(judge(before, replaced, now).verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** Even pads down to a minimum: at it they still are, below it they are not. */
    @ParameterizedTest
    @CsvSource({"2.9, SPENT", "1.6, SPENT", "1.5, UNSAFE"})
    void theThinnerPadIsHeldAgainstBothMinima(double thinMm, Verdict verdict) {
        for (var thin : BrakeCorner.SIDES) {
            var other = thin == Spot.INNER ? Spot.OUTER : Spot.INNER;
            var pads = judge(visit("v", pad(thin, thinMm), pad(other, thinMm + 0.5)));
            assertThat(pads.verdict()).isEqualTo(verdict);
            assertThat(sentences(pads))
                    .startsWith(
                            verdict == Verdict.UNSAFE
                                    ? new PadSaid.BelowLegal(Corner.RR)
                                    : new PadSaid.AtLimit(Corner.RR));
            assertThat(pads.lifeLeft()).isZero();
        }
    }

    /** The limits of these tests are our own: no law is known for the car's place. */
    @Test
    void aMinimumIsCalledLegalOnlyWhereALawIsKnown() {
        var pads = judge(visit("v", pad(Spot.INNER, 7), pad(Spot.OUTER, 7)));
        assertThat(pads.evidence())
                .map(Evidence::what)
                .contains(new BrakeSaid.LeastForTheRoad(false))
                .doesNotContain(new BrakeSaid.LeastForTheRoad(true));
    }

    /** The mark: 7 mm of pads that are 11 mm new and 3 mm at their end have half of their life left. */
    @Test
    void theMarkShowsTheLifeOfTheThinnerPad() {
        assertThat(judge(visit("v", pad(Spot.INNER, 7), pad(Spot.OUTER, 7.5))).lifeLeft())
                .isEqualTo(0.5);
    }

    @Test
    void aPadThatWasNotReadIsNamed() {
        assertThat(notJudged(pad(Spot.INNER, 8))).contains(new PadSaid.NotRead(Corner.RR, Spot.OUTER));
        assertThat(notJudged(pad(Spot.OUTER, 8))).contains(new PadSaid.NotRead(Corner.RR, Spot.INNER));
        assertThat(notJudged()).contains(new PadSaid.NotRead(Corner.RR, null));
    }

    /** The words of the scale in their order: none fitted, clear of the disc, touches the disc, wrong place. */
    @ParameterizedTest
    @CsvSource({"0, HOLDS", "1, HOLDS", "2, SPENT", "3, SPENT"})
    void anIndicatorOnTheDiscIsTheEndHoweverThickThePad(double place, Verdict verdict) {
        var pads = judge(visit(
                "v",
                pad(Spot.INNER, 8),
                pad(Spot.OUTER, 8),
                Cars.reading(Measure.PAD_WEAR_INDICATOR, Corner.RR, null, Spot.OUTER, place)));
        assertThat(pads.verdict()).isEqualTo(verdict);
    }

    private static Reading pad(Spot side, double thicknessMm) {
        return Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, side, thicknessMm);
    }

    private static Visit visit(String id, Reading... readings) {
        return new Visit(id, Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("S-"), List.of(readings));
    }

    private static List<Said> sentences(Finding finding) {
        return ((Listed) finding.plainWords()).items();
    }

    private static Finding judge(Visit... visits) {
        return all(new ArrayList<>(), visits).stream()
                .filter(finding -> finding.subject().part() == Subject.Part.PAD)
                .findFirst()
                .orElseThrow();
    }

    private static List<Said> notJudged(Reading... readings) {
        var notJudged = new ArrayList<Said>();
        all(notJudged, visit("v", readings));
        return notJudged;
    }

    private static List<Finding> all(List<Said> notJudged, Visit... visits) {
        var judged = BrakeFindings.judge(Cases.of(Cars.vehicle(), visits)
                .running(28, 6)
                .until(Cars.AUTUMN.plusDays(180))
                .last());
        notJudged.addAll(judged.notJudged());
        return judged.findings();
    }

    /** What was read, and the difference at the visit before, stand beside the verdict; below the legal minimum, the directive's defect. */
    @Test
    void theReadingsStandBesideTheVerdict() {
        var before = visit("before", pad(Spot.INNER, 8.5), pad(Spot.OUTER, 8));
        var trailing = Cars.reading(Measure.PAD_THICKNESS_TRAILING, Corner.RR, null, Spot.OUTER, 7.75);
        var pads = judge(before, visit("v", pad(Spot.INNER, 8), trailing));
        assertThat(pads.evidence())
                .contains(
                        new Evidence(Spot.INNER, new Amount(8, "mm", 1), new CarSaid.HowRead("8.0")),
                        new Evidence(Spot.OUTER, new Amount(7.75, "mm", 1), new CarSaid.HowRead("7.75")))
                .anyMatch(each -> each.what() == PadSaid.Label.VISIT_BEFORE
                        && each.value().equals(new PadSaid.Apart(new Amount(0.5, "mm", 1))))
                .noneMatch(each -> each.value() == BrakeSaid.Category.DANGEROUS);
        assertThat(judge(visit("v", pad(Spot.INNER, 1.5), pad(Spot.OUTER, 1.5))).evidence())
                .anyMatch(each -> each.value() == BrakeSaid.Category.DANGEROUS);
    }
}
