package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
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
}
