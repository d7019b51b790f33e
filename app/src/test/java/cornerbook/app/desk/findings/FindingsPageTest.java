package cornerbook.app.desk.findings;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.cars.CarLibrary;
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
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
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

    /** The paper has one line for it; the page has one card. */
    @Test
    void whatIsWornOnAnAxleIsOneCardWithWhatItAsksFor() {
        assertThat(partsOf("disc-under-minimum"))
                .contains(List.of(Subject.Part.DISC, Subject.Part.DISC, Subject.Part.BRAKE_PAIR));
        var page = new FindingsPage(CarLibrary.assess(CarLibrary.car(CarLibrary.text("disc-under-minimum"))));
        assertThat(page.cards().stream()
                        .filter(card -> card.first().subject().part() == Subject.Part.DISC)
                        .flatMap(card -> card.todos().stream())
                        .map(Todo::action))
                .containsExactly(Todo.Action.REPLACE_PAIR);
        assertThat(page.advised())
                .extracting(FindingsPage.Line::key)
                .contains("DISC.LF.REPLACE_PAIR", "DISC.RF.REPLACE_PAIR")
                .noneMatch(key -> key.startsWith(Subject.Part.BRAKE_PAIR.name()));
    }

    /** A disc that its brake keeps warm is no matter of its own. */
    @Test
    void warmthOfABrakeStandsWithWhatWasFoundAtIt() {
        var text = CarLibrary.text("piston-seized");
        int last = text.lastIndexOf("\"readings\": [") + "\"readings\": [".length();
        var warm = text.substring(0, last) + """
                {"measure": "disc temperature", "corner": "LF", "value": "160 °C"},
                {"measure": "disc temperature", "corner": "RF", "value": "40 °C"},
                """ + text.substring(last);
        assertThat(parts(warm))
                .filteredOn(parts -> parts.contains(Subject.Part.BRAKE_PAIR))
                .singleElement()
                .asInstanceOf(InstanceOfAssertFactories.list(Subject.Part.class))
                .contains(Subject.Part.CALIPER);
    }

    private static List<List<Subject.Part>> partsOf(String car) {
        return parts(CarLibrary.text(car));
    }

    private static List<List<Subject.Part>> parts(String text) {
        return new FindingsPage(CarLibrary.assess(CarLibrary.car(text)))
                .cards().stream()
                        .map(card -> card.things().stream()
                                .map(thing -> thing.finding().subject().part())
                                .toList())
                        .toList();
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

    /** A set from the store did not come on the car: it is not told what it would run if it stayed where it is. */
    @Test
    void aSetThatDidNotComeOnTheCarCannotStayUnmoved() {
        var fromStore = assessments()
                .filter(assessment -> assessment.plan() != null
                        && assessment.plan().wheelAt().values().stream()
                                .noneMatch(assessment.visit().arrivedOn()::containsValue))
                .toList();
        assertThat(fromStore)
                .isNotEmpty()
                .allSatisfy(assessment -> assertThat(
                                new FindingsPage(assessment).ran(Objects.requireNonNull(assessment.plan())))
                        .isNotEqualTo(FindingsPage.Ran.NOW));
    }

    @Test
    void daysAreWrittenAsEverywhere() {
        assertThat(assessments()
                        .flatMap(assessment -> assessment.findings().stream())
                        .flatMap(finding -> Stream.of(finding.title(), finding.plainWords())))
                .allSatisfy(words -> assertThat(Told.say(words)).doesNotContainPattern("\\d{4}-\\d{2}-\\d{2}"));
    }
}
