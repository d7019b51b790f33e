package cornerbook.app.desk.days;

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
     * @param kept how many appointments stay as they are
     */
    record Proposed(PlanAsked asked, DayPlanner.Gathered from, List<PlanRow> rows, int kept) implements PlanState {
        public Proposed {
            rows = List.copyOf(rows);
        }

        public List<PlanRow> rows(PlanRow.Kind kind) {
            return rows.stream().filter(row -> row.kind() == kind).toList();
        }

        /** Those that would be stored. */
        public List<PlanRow> changes() {
            return rows.stream().filter(row -> row.after() != null).toList();
        }
    }

    /** It was accepted. */
    record Accepted(int changes) implements PlanState {}

    /** It could not be made; the log has it by that id. */
    record Failed(String faultId) implements PlanState {}
}
