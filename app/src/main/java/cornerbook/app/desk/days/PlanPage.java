package cornerbook.app.desk.days;

import cornerbook.app.book.customer.Reach;
import cornerbook.app.desk.Form;
import cornerbook.core.days.WorkHours;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A plan that is asked for, searched for or proposed.
 *
 * @param hasHours whether anybody works in the coming weeks
 * @param reach who may be called
 * @param typed what stands in the form
 * @param error one sentence, empty when nothing was refused
 */
public record PlanPage(LocalDate today, PlanState state, boolean hasHours, Reach reach, Form typed, String error) {
    public List<PlanRow.Kind> kinds() {
        return List.of(PlanRow.Kind.values());
    }

    public List<Integer> weeks() {
        return IntStream.rangeClosed(0, PlanAsked.MOST_WEEKS).boxed().toList();
    }

    public boolean isWeeks(int weeks) {
        return typed.get("weeks").equals(String.valueOf(weeks));
    }

    /** The minute from which on today is laid anew. */
    public String madeAt(PlanState.Proposed proposed) {
        return WorkHours.clock(CarsHere.moment(proposed.from().now()).minute());
    }

    public int longestSeconds() {
        return PlanWork.LONGEST_SECONDS;
    }
}
