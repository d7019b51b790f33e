package cornerbook.app.desk.findings;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.request.Told;
import cornerbook.core.assess.AssessSaid;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.SaidOnce;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every finding of the invented shop stands on its page once, and what asks for something stands first. */
class FindingsPageTest {
    private static final List<CarHistory> SHOP = DemoShop.histories(LocalDate.of(2026, 11, 25));

    private static final Assessor ASSESSOR = new Assessor(LimitsFile.load());

    private static Stream<Assessment> assessments() {
        return SHOP.stream().flatMap(car -> car.visits().stream().map(visit -> ASSESSOR.assess(car, visit.id())));
    }

    @Test
    void noFindingIsLostAndNoneStandsTwice() {
        assertThat(assessments()).allSatisfy(assessment -> {
            var page = new FindingsPage(assessment);
            var shown = Stream.concat(
                            page.cards().stream().flatMap(card -> card.things().stream()),
                            page.areas().stream().flatMap(area -> area.things().stream()))
                    .flatMap(thing -> Stream.concat(Stream.of(thing.finding()), thing.patterns().stream()))
                    .toList();
            assertThat(shown).containsExactlyInAnyOrderElementsOf(assessment.findings());
        });
    }

    @Test
    void whatAsksForSomethingIsACardAndGravestFirst() {
        assertThat(assessments()).allSatisfy(assessment -> {
            var page = new FindingsPage(assessment);
            assertThat(page.cards().stream().map(card -> card.first().verdict()))
                    .isSortedAccordingTo(java.util.Comparator.reverseOrder());
            assertThat(page.areas().stream().flatMap(area -> area.things().stream()))
                    .allMatch(thing -> thing.finding().verdict() == Verdict.HOLDS);
        });
    }

    @Test
    void sameCautionStandsOnceWithAllItsCorners() {
        assertThat(assessments()).allSatisfy(assessment -> {
            var page = new FindingsPage(assessment);
            assertThat(page.cards().stream().map(FindingsPage.Card::words)).doesNotHaveDuplicates();
            assertThat(page.cards().stream()
                            .flatMap(card -> card.things().stream())
                            .flatMap(thing -> thing.advice().stream()))
                    .doesNotHaveDuplicates();
            assertThat(page.notJudged()).doesNotHaveDuplicates();
        });
        var said = new SaidOnce(SHOP.getFirst());
        assertThat(said.join(List.of(
                        new NotMeasured(Corner.LF, Subject.Part.PAD),
                        new NotMeasured(Corner.LF, Subject.Part.DISC),
                        new NotMeasured(Corner.RF, Subject.Part.PAD),
                        new NotTight(new CornerName(Corner.LR)))))
                .containsExactly(
                        new AssessSaid.Likewise(new NotMeasured(Corner.LF, Subject.Part.PAD), List.of(Corner.RF)),
                        new NotMeasured(Corner.LF, Subject.Part.DISC),
                        new NotTight(new CornerName(Corner.LR)));
    }

    private record NotMeasured(Corner corner, Subject.Part part) implements Said {}

    private record NotTight(Said corner) implements Said {}

    @Test
    void patternOfWearStandsWithItsSet() {
        assertThat(assessments().flatMap(assessment -> new FindingsPage(assessment).cards().stream()))
                .extracting(card -> card.first().subject().part())
                .contains(Subject.Part.WHEEL_SET)
                .doesNotContain(Subject.Part.TREAD_PATTERN);
    }

    @Test
    void evidenceOfOneSetStandsOnceAndNamesItsWheel() {
        assertThat(assessments().flatMap(assessment -> new FindingsPage(assessment).cards().stream()))
                .flatExtracting(FindingsPage.Card::things)
                .allSatisfy(thing -> {
                    assertThat(thing.evidence())
                            .doesNotHaveDuplicates()
                            .containsAll(thing.finding().evidence());
                    assertThat(thing.patterns())
                            .allSatisfy(pattern -> assertThat(thing.evidence())
                                    .anyMatch(evidence -> thing.patterns().size() == 1
                                            || (evidence.what() instanceof FindingsSaid.OfWheel of
                                                    && of.tag()
                                                            .equals(pattern.subject()
                                                                    .wheelTag()))));
                });
    }

    @Test
    void daysAreWrittenAsEverywhere() {
        assertThat(assessments()
                        .flatMap(assessment -> assessment.findings().stream())
                        .flatMap(finding -> Stream.of(finding.title(), finding.plainWords())))
                .allSatisfy(words -> assertThat(Told.say(words)).doesNotContainPattern("\\d{4}-\\d{2}-\\d{2}"));
    }
}
