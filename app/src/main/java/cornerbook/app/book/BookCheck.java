package cornerbook.app.book;

import cornerbook.core.visit.VisitRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Looks for damage: in the file, between its tables, and against the rules of a visit. */
final class BookCheck {
    private BookCheck() {}

    static List<String> problems(Handle handle) {
        var problems = new ArrayList<String>();
        var damage = handle.select("pragma integrity_check").mapTo(String.class).list();
        if (!damage.equals(List.of("ok"))) {
            // What SQLite tells of its pages helps nobody, and what could be read of the rest would only repeat it.
            return List.of("The file of the book is damaged; restore a backup into another folder");
        }
        handle.select("pragma foreign_key_check")
                .map((row, context) -> "A row of %s points to a row of %s that is not there"
                        .formatted(row.getString("table"), row.getString("parent")))
                .forEach(problems::add);
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
            }
        }
        return problems;
    }
}
