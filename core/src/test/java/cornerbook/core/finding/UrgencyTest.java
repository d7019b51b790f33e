package cornerbook.core.finding;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A verdict is told in the word that fits its subject: a pressure is not "spent", and a good tyre that asks for something is told so. */
class UrgencyTest {
    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

    @ParameterizedTest
    @CsvSource({
        "PAD, HOLDS, HOLDS",
        "PRESSURE, HOLDS, IN_ORDER",
        "PAD, RUNS_OUT, RUNS_OUT",
        "BRAKE_PAIR, RUNS_OUT, WATCH",
        "WHEEL_SET, SPENT, SPENT",
        "WHEEL_TORQUE, SPENT, PUT_RIGHT",
        "LIFT, SPENT, PUT_RIGHT",
        "BATTERY, UNSAFE, UNSAFE"
    })
    void theWordFitsWhatIsJudged(Subject.Part part, Verdict verdict, Urgency urgency) {
        assertThat(finding(part, verdict, null).urgency()).isEqualTo(urgency);
    }

    @Test
    void whatHoldsAndAsksForSomethingIsAdvice() {
        var uneven = finding(Subject.Part.TREAD_PATTERN, Verdict.HOLDS, null)
                .todo(Todo.Action.MEASURE_ALIGNMENT, Todo.When.BEFORE_NEXT_VISIT);
        assertThat(uneven.urgency()).isEqualTo(Urgency.ADVICE);
        assertThat(finding(Subject.Part.PAD, Verdict.HOLDS, null)
                        .todo(Todo.Action.REPLACE)
                        .todo())
                .isNull();
    }

    @Test
    void byWhenFollowsFromTheVerdictAndTheDayThatItRunsOut() {
        assertThat(by(Verdict.UNSAFE, DAY)).isEqualTo(Todo.When.BEFORE_DRIVING);
        assertThat(by(Verdict.SPENT, null)).isEqualTo(Todo.When.NOW);
        assertThat(by(Verdict.RUNS_OUT, DAY)).isEqualTo(new Todo.ByDay(DAY));
        assertThat(by(Verdict.RUNS_OUT, null)).isEqualTo(Todo.When.BEFORE_NEXT_VISIT);
    }

    private static @Nullable Said by(Verdict verdict, @Nullable LocalDate horizon) {
        var todo = finding(Subject.Part.PAD, verdict, horizon)
                .todo(Todo.Action.REPLACE)
                .todo();
        return todo == null ? null : todo.by();
    }

    private static Finding finding(Subject.Part part, Verdict verdict, @Nullable LocalDate horizon) {
        var said = Said.verbatim("invented");
        return new Finding(
                new Subject(part, null, null, null), verdict, said, said, horizon, null, 0.5, List.of(), said);
    }
}
