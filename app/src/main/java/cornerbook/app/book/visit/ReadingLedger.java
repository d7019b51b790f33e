package cornerbook.app.book.visit;

import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.store.BookException;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Appends readings to visits. */
public final class ReadingLedger {
    private final Handle handle;

    public ReadingLedger(Handle handle) {
        this.handle = handle;
    }

    public Optional<Reading> find(String readingId) {
        return handle.select("select * from reading where id = ?", readingId)
                .map((row, context) -> CarReader.reading(row))
                .findFirst();
    }

    /** Appends those that are not there yet, and gives them. */
    public List<Reading> add(CarHistory history, String visitId, List<Reading> readings) {
        var visit = history.getVisit(visitId);
        var fresh = new ArrayList<Reading>();
        for (var reading : readings) {
            var known = find(reading.id());
            if (known.isEmpty()) {
                VisitRules.refuseNew(history.vehicle(), reading).ifPresent(problem -> {
                    throw new BookException(problem);
                });
                fresh.add(reading);
            } else if (!visit.readings().contains(known.get())) {
                throw new BookException(new VisitSaid.ReadingElsewhere(reading.id()));
            } else if (!known.get().equals(reading)) {
                throw new BookException(new VisitSaid.ReadingOtherwise(reading.id()));
            }
        }
        var all = new ArrayList<>(visit.readings());
        all.addAll(fresh);
        var longer = visit.withReadings(all);
        var changed = VisitLedger.replaced(history, longer);
        VisitLedger.refuseProblems(changed);
        new CarWriter(handle).writeReadings(visitId, visit.readings().size(), fresh);
        if (fresh.stream().anyMatch(reading -> reading.measure() == Measure.WHEEL_TORQUE)) {
            new RetorqueLedger(handle).change(changed, longer);
        }
        return fresh;
    }
}
