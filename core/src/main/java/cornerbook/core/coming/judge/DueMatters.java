package cornerbook.core.coming.judge;

import cornerbook.core.coming.DueMatter;
import cornerbook.core.coming.Matter;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * For what a car is to come back after a visit, and by when. The next visit is due on the day to which all was judged. What a
 * finding asks to be replaced is due on the day that the finding has; what it asks for now, on the day of the visit; what it asks
 * for before a set is fitted or at the next visit, on the day of that. Wheels to be tightened again are not among them: they are
 * due as long as nobody has recorded it, which the book knows.
 */
public final class DueMatters {
    private DueMatters() {}

    /**
     * The matters of a case, each at most once, with its first day.
     *
     * @param findings of the case
     */
    public static List<DueMatter> of(Case given, List<Finding> findings) {
        return Stream.of(
                        first(given, findings, Subject.Part.TYRE_AGE, Matter.TYRE_AGE),
                        first(given, findings, Subject.Part.BRAKE_FLUID, Matter.BRAKE_FLUID),
                        Optional.of(new DueMatter(Matter.NEXT_VISIT, given.nextVisit())))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<DueMatter> first(Case given, List<Finding> findings, Subject.Part part, Matter matter) {
        return findings.stream()
                .filter(finding -> finding.subject().part() == part)
                .flatMap(finding -> day(given, finding.todo()))
                .min(LocalDate::compareTo)
                .map(day -> new DueMatter(matter, day));
    }

    private static Stream<LocalDate> day(Case given, @Nullable Todo todo) {
        if (todo == null || todo.action() != Todo.Action.REPLACE) {
            return Stream.empty();
        }
        return Stream.of(
                switch (todo.by()) {
                    case Todo.ByDay(var day) -> day;
                    case Todo.When when
                    when when == Todo.When.BEFORE_FITTING
                            || when == Todo.When.AT_NEXT_VISIT
                            || when == Todo.When.BEFORE_NEXT_VISIT -> given.nextVisit();
                    default -> given.visit().date();
                });
    }
}
