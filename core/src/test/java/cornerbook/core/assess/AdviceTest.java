package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AdviceTest {
    /** Nobody asks a customer whether a wheel is to be tightened that the shop has just fitted. */
    @ParameterizedTest
    @CsvSource({
        "REPLACE_PAIR, true",
        "SERVICE_BRAKE, true",
        "MEASURE_ALIGNMENT, true",
        "TORQUE_AGAIN, false",
        "END_SERVICE_MODE, false",
        "SET_PRESSURE, false",
        "MEASURE_AGAIN, false"
    })
    void whatTheShopOwesWithItsOwnWorkIsNotTheCustomersToDecline(Todo.Action action, boolean declined) {
        var finding = new Finding(
                new Subject(Subject.Part.PAD, Corner.LF, null, null),
                Verdict.SPENT,
                Said.verbatim("title"),
                Said.verbatim("words"),
                null,
                null,
                0,
                List.of(),
                Said.verbatim("source"));
        assertThat(new Advice("key", List.of(finding.todo(action)), null).mayBeDeclined())
                .isEqualTo(declined);
        assertThat(new Advice("key", List.of(finding), null).mayBeDeclined()).isFalse();
    }

    /** What is to be done, of which set, and why: no sentence begins in the middle. */
    @Test
    void whatIsAskedNamesTheSetBesideTheWork() {
        var finding = new Finding(
                        new Subject(Subject.Part.PRESSURE, null, "S-LF", null),
                        Verdict.SPENT,
                        Said.verbatim("title"),
                        Said.verbatim("It loses air."),
                        null,
                        null,
                        0,
                        List.of(),
                        Said.verbatim("source"))
                .todo(Todo.Action.FIND_LEAK);
        assertThat(new Advice("key", List.of(finding), new SetOf(SeasonKind.SUMMER)).asked())
                .isEqualTo(new AssessSaid.Asked(
                        new AssessSaid.Task(
                                Todo.Action.FIND_LEAK, Listed.commas(List.of(new SetOf(SeasonKind.SUMMER)))),
                        Said.verbatim("It loses air.")));
    }

    /** The pads of a caliper and its pins are freed and cleaned as one work: it is told, offered and charged once. */
    @Test
    void whatIsSeenAtOneBrakeIsOneWork() {
        var visit = Cars.visit(List.of(
                Cars.reading(Measure.PAD_MOVEMENT, Corner.RR, null, Spot.INNER, 2),
                Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.RR, null, null, 2),
                Cars.reading(Measure.PAD_MOVEMENT, Corner.LF, null, Spot.INNER, 2)));
        var assessment = new Assessor(Cars.LIMITS).assess(Cars.history(visit), visit.id());
        var freed = assessment.advice().stream()
                .filter(advice -> advice.todo()
                        .filter(todo -> todo.action() == Todo.Action.SERVICE_BRAKE)
                        .isPresent())
                .toList();
        assertThat(freed).extracting(Advice::key).containsExactly("PAD.LF.SERVICE_BRAKE", "PAD.RR.SERVICE_BRAKE");
        assertThat(freed.getLast().findings())
                .extracting(finding -> finding.subject().part())
                .containsExactly(Subject.Part.PAD, Subject.Part.CALIPER);
        assertThat(freed.getLast().task())
                .as("the sentence names the corner, the work alone does not")
                .isEqualTo(new AssessSaid.Work(
                        Subject.Part.PAD,
                        Todo.Action.SERVICE_BRAKE,
                        Listed.commas(List.of(Advice.corners(List.of(Corner.RR))))));
        assertThat(freed.getLast().asked())
                .isEqualTo(new AssessSaid.Asked(
                        new AssessSaid.Task(Todo.Action.SERVICE_BRAKE, null),
                        Listed.sentences(freed.getLast().findings().stream()
                                .map(Finding::plainWords)
                                .toList())));
    }

    @Test
    void whatWasFreedTodayIsLookedAtAtTheNextVisit() {
        var visit = Cars.visit(List.of(
                Cars.reading(Measure.PAD_MOVEMENT, Corner.RR, null, Spot.INNER, 2),
                Cars.reading(Measure.PAD_MOVEMENT_AFTER_SERVICE, Corner.RR, null, null, 0),
                Cars.reading(Measure.PAD_MOVEMENT, Corner.LF, null, Spot.INNER, 2)));
        assertThat(new Assessor(Cars.LIMITS)
                        .assess(Cars.history(visit), visit.id()).advice().stream()
                                .filter(Advice::isForNextVisit)
                                .map(Advice::key))
                .containsExactly("PAD.RR.SERVICE_BRAKE");
    }

    /** A customer agreed to free a brake when its pad was seized: once the pad is free, its pins need no other word. */
    @ParameterizedTest
    @CsvSource({
        "PAD.RR.SERVICE_BRAKE, CALIPER.RR.SERVICE_BRAKE, true",
        "PAD.RR.SERVICE_BRAKE, PAD.RR.SERVICE_BRAKE, true",
        "PAD.RR.SERVICE_BRAKE, PAD.LR.SERVICE_BRAKE, false",
        "PAD.RR.SERVICE_BRAKE, PAD_SEIZING.SERVICE_BRAKE, false",
        "PAD.RR.REPLACE_PAIR, DISC.RR.REPLACE_PAIR, false",
        "OWN, PAD.RR.SERVICE_BRAKE, false"
    })
    void theBrakeOfACornerIsFreedOnceWhateverIsSeenThere(String one, String other, boolean same) {
        assertThat(Advice.isSameWork(one, other)).isEqualTo(same);
        assertThat(Advice.isSameWork(other, one)).isEqualTo(same);
    }
}
