package cornerbook.core.finding;

import cornerbook.core.quantity.Range;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was found out about one subject. Every screen, sheet and file is a view of this; its parts are the fields of a finding in
 * the JSON of an assessment.
 *
 * @param title one line, for the technician
 * @param plainWords one or two sentences for the customer
 * @param horizon date at which it runs out; null when it does not within the time looked at, or cannot be dated
 * @param probability that it holds until the next visit; null when the finding is a plain comparison with a limit
 * @param lifeLeft share of the usable life that is left, 0 to 1: the fill of the mark
 * @param evidence readings, rule or formula, and how sure
 * @param source where the limit or the formula comes from
 * @param todo what to do, and by when; null where nothing is
 */
public record Finding(
        Subject subject,
        Verdict verdict,
        Said title,
        Said plainWords,
        @Nullable LocalDate horizon,
        @Nullable Double probability,
        double lifeLeft,
        List<Evidence> evidence,
        Said source,
        @Nullable Todo todo) {
    public Finding {
        Range.check("life left", lifeLeft, 0, 1, "");
        if (probability != null) {
            Range.check("probability", probability, 0, 1, "");
        }
        evidence = List.copyOf(evidence);
    }

    /** Of which nothing follows. */
    public Finding(
            Subject subject,
            Verdict verdict,
            Said title,
            Said plainWords,
            @Nullable LocalDate horizon,
            @Nullable Double probability,
            double lifeLeft,
            List<Evidence> evidence,
            Said source) {
        this(subject, verdict, title, plainWords, horizon, probability, lifeLeft, evidence, source, null);
    }

    /** The same with what it asks for, as soon as its verdict says; one that holds asks for nothing. */
    public Finding todo(Todo.Action action) {
        return switch (verdict) {
            case UNSAFE -> todo(action, Todo.When.BEFORE_DRIVING);
            case SPENT -> todo(action, Todo.When.NOW);
            case RUNS_OUT -> todo(action, horizon == null ? Todo.When.BEFORE_NEXT_VISIT : new Todo.ByDay(horizon));
            case HOLDS -> this;
        };
    }

    /** The same with what it asks for, and by when, whatever the verdict. */
    public Finding todo(Todo.Action action, Said by) {
        return new Finding(
                subject,
                verdict,
                title,
                plainWords,
                horizon,
                probability,
                lifeLeft,
                evidence,
                source,
                new Todo(action, by));
    }

    /** The same, to be done before the car leaves where it had to be done now. */
    public Finding beforeLeaving() {
        return todo != null && todo.by() == Todo.When.NOW ? todo(todo.action(), Todo.When.BEFORE_LEAVING) : this;
    }

    /** The same, to be done now where its day is here. */
    public Finding on(LocalDate today) {
        return todo != null && todo.by() instanceof Todo.ByDay(var day) && !day.isAfter(today)
                ? todo(todo.action(), Todo.When.NOW)
                : this;
    }

    /** The verdict in the word for what it is about. */
    public Urgency urgency() {
        return Urgency.of(this);
    }
}
