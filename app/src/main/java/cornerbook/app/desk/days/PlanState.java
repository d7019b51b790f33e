package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.PlannedTurn;
import cornerbook.core.days.plan.PlanGap;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How far a plan is. */
public sealed interface PlanState {
    /** None was asked for, or it was thrown away. */
    record None() implements PlanState {}

    /**
     * It is being searched for.
     *
     * @param seconds since it began
     * @param points of the best so far; null before there is one
     */
    record Searching(PlanAsked asked, int seconds, @Nullable Long points) implements PlanState {}

    /**
     * It waits for an answer.
     *
     * @param gap how far it may be from the best
     */
    record Proposed(PlanAsked asked, DayPlanner.Gathered from, List<PlanRow> rows, PlanGap gap) implements PlanState {
        /** So old a plan of today may be when it is accepted: as much as two cars may overlap. Common practice, no source. */
        private static final int MINUTES_OF_TODAY = 15;

        public Proposed {
            rows = List.copyOf(rows);
        }

        public List<PlanRow> rows(PlanRow.Kind kind) {
            return rows.stream().filter(row -> row.kind() == kind).toList();
        }

        /** Whether what was left of today when it was made is no longer left. */
        boolean isOver(ZonedDateTime now) {
            return asked.withToday() && Duration.between(from.now(), now).toMinutes() > MINUTES_OF_TODAY;
        }

        /** How many appointments stay as they are. */
        public int kept() {
            return (int) rows(PlanRow.Kind.STAYS).stream()
                    .filter(row -> row.turn() != PlannedTurn.NEW)
                    .count();
        }

        /** Those that would be stored. */
        public List<PlanRow> changes() {
            return rows.stream().filter(row -> row.kind().isChange()).toList();
        }
    }

    /** It was accepted. */
    record Accepted(int changes) implements PlanState {}

    /** It could not be made; the log has it by that id. */
    record Failed(String faultId) implements PlanState {}
}
