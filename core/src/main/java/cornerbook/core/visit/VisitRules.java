package cornerbook.core.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The rules that a car's history must keep before it enters the book. */
public final class VisitRules {
    private VisitRules() {}

    /**
     * Everything that cannot stand, empty when the history is sound.
     *
     * @param today the last date that is not in the future
     */
    public static List<Problem> check(CarHistory history, LocalDate today) {
        var problems = new ArrayList<Problem>();
        for (int i = 0; i < history.visits().size(); i++) {
            if (history.visits().get(i).date().isAfter(today)) {
                problems.add(new Problem(
                        "/visits/" + i + "/date", "date lies in the future, expected " + today + " or earlier"));
            }
        }
        return List.copyOf(problems);
    }
}
