package cornerbook.app.book.backup;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.bay.BayRows;
import cornerbook.app.book.bay.RivalReading;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.knowledge.OthersLedger;
import cornerbook.app.book.photo.PhotoLedger;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookStore;
import cornerbook.app.log.Faults;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Looks for damage: in the file, between its tables, against the rules of a visit, and between values and what was written for them. */
public final class BookCheck {
    /** A value is computed from what was written; two programs may round the last bits of it in two ways. */
    private static final double ROUNDING = 1e-9;

    private BookCheck() {}

    public static List<Said> problems(BookStore store) {
        return store.read(handle -> problems(store, handle));
    }

    private static List<Said> problems(BookStore store, Handle handle) {
        var damage = store.damage(handle);
        if (!damage.isEmpty()) {
            // What could be read of the rest would only repeat it.
            return damage;
        }
        var problems = new ArrayList<Said>(store.loosePointers(handle));
        problems.addAll(new PhotoLedger(within(handle)).problems());
        problems.addAll(new OthersLedger(within(handle)).problems());
        for (var id : handle.select("select id from vehicle order by id")
                .mapTo(String.class)
                .list()) {
            try {
                new CarReader(handle).find(id).ifPresent(history -> addProblems(handle, history, problems));
            } catch (BookException e) {
                problems.add(e.said());
            } catch (IllegalArgumentException | DateTimeException e) {
                problems.add(new BackupSaid.NotesUnreadable(id));
            } catch (RuntimeException fault) {
                problems.add(new BackupSaid.CarNotChecked(id, Faults.note("checking car " + id, fault)));
            }
        }
        return problems;
    }

    private static void addProblems(Handle handle, CarHistory history, List<Said> problems) {
        var carId = history.vehicle().id();
        VisitRules.check(history, LocalDate.MAX)
                .forEach(problem -> problems.add(new BackupSaid.CarUnsound(carId, problem.where(), problem.message())));
        var notes = new BayRows(handle);
        for (var visit : history.visits()) {
            var rivals = notes.listRivals(visit.id()).stream().map(RivalReading::reading);
            Stream.concat(visit.readings().stream(), rivals)
                    .filter(reading -> !isAsWritten(reading))
                    .forEach(reading -> problems.add(new BackupSaid.ReadingChanged(
                            carId, visit.id(), reading.id(), value(reading), reading.asWritten())));
            // Each note is read, so that a value in it that cannot stand is found.
            notes.listTicks(visit.id());
            notes.listRemarks(visit.id());
            notes.listDeclined(visit.id());
            notes.listDepartures(visit.id());
            notes.listAuthors(visit.id());
        }
    }

    /** A value of words is their place on the scale, a bare number. */
    private static Amount value(Reading reading) {
        var unit = reading.measure().unit();
        return Amount.exact(reading.value(), unit.equals("1") ? "" : unit);
    }

    private static boolean isAsWritten(Reading reading) {
        try {
            double written = WrittenReading.valueOf(reading.measure(), reading.asWritten());
            return Math.abs(written - reading.value()) <= ROUNDING;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
