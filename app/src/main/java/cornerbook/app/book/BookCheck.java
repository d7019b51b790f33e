package cornerbook.app.book;

import cornerbook.app.log.Faults;
import cornerbook.core.visit.VisitRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Looks for damage: in the file, between its tables, and against the rules of a visit. */
final class BookCheck {
    private BookCheck() {}

    static List<String> problems(BookStore store) {
        return store.read(handle -> problems(store, handle));
    }

    private static List<String> problems(BookStore store, Handle handle) {
        var damage = store.damage(handle);
        if (!damage.isEmpty()) {
            // What could be read of the rest would only repeat it.
            return damage;
        }
        var problems = new ArrayList<>(store.loosePointers(handle));
        problems.addAll(PhotoLedger.problems(handle));
        for (var id : handle.select("select id from vehicle order by id")
                .mapTo(String.class)
                .list()) {
            try {
                new CarReader(handle)
                        .find(id)
                        .ifPresent(history -> VisitRules.check(history, LocalDate.MAX)
                                .forEach(problem -> problems.add(
                                        "Car %s, %s: %s".formatted(id, problem.where(), problem.message()))));
            } catch (BookException e) {
                problems.add(String.valueOf(e.getMessage()));
            } catch (RuntimeException fault) {
                problems.add("Car %s could not be checked: the program has a fault with it, %s in the log"
                        .formatted(id, Faults.note("checking car " + id, fault)));
            }
        }
        return problems;
    }
}
