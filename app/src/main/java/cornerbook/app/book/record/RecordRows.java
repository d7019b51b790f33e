package cornerbook.app.book.record;

import cornerbook.app.book.bay.BayRows;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.WheelChanges;
import cornerbook.app.book.photo.PhotoLedger;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.ReadingLedger;
import cornerbook.app.book.visit.VisitChanges;
import java.util.HashMap;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Takes out and puts in all that the book has of a car. */
public final class RecordRows {
    private final Handle handle;
    private final BayRows rows;

    public RecordRows(Handle handle) {
        this.handle = handle;
        this.rows = new BayRows(handle);
    }

    public Optional<CarRecord> find(String vehicleId) {
        return new CarReader(handle).find(vehicleId).map(history -> {
            var notes = new HashMap<String, VisitNotes>();
            history.visits().stream()
                    .map(visit -> visit.id())
                    .forEach(id -> Optional.of(notes(id))
                            .filter(found -> !found.isEmpty())
                            .ifPresent(found -> notes.put(id, found)));
            return new CarRecord(
                    history,
                    notes,
                    new WheelChanges(handle, vehicleId).list(),
                    new VisitChanges(handle, vehicleId).list());
        });
    }

    public VisitNotes notes(String visitId) {
        var rivals = rows.listRivals(visitId);
        return new VisitNotes(
                rows.listTicks(visitId),
                rivals,
                rivals.stream()
                        .flatMap(rival -> rows.findAnswer(rival.reading().id()).stream())
                        .toList(),
                rows.listDepartures(visitId),
                PhotoLedger.listKept(handle, visitId),
                rows.listAuthors(visitId));
    }

    /**
     * The notes and changes of a car that was just added.
     *
     * @throws BookException when an id is in the book already
     */
    public void add(CarRecord record) {
        var wheelChanges = new WheelChanges(handle, record.history().vehicle().id());
        record.wheelChanges().forEach(wheelChanges::keep);
        var visitChanges = new VisitChanges(handle, record.history().vehicle().id());
        record.visitChanges().forEach(visitChanges::keep);
        record.notes().forEach((visitId, notes) -> {
            notes.ticks().forEach(tick -> requireNew(rows.add(visitId, tick), RecordSaid.Note.TICK, tick.id()));
            notes.rivals()
                    .forEach(rival -> requireNew(
                            new ReadingLedger(handle).find(rival.reading().id()).isEmpty() && rows.add(visitId, rival),
                            RecordSaid.Note.READING,
                            rival.reading().id()));
            notes.authors().forEach(rows::add);
            notes.answers().forEach(rows::add);
            notes.departures()
                    .forEach(departure ->
                            requireNew(rows.add(visitId, departure), RecordSaid.Note.DEPARTURE, departure.id()));
            notes.photos()
                    .forEach(kept -> requireNew(
                            PhotoLedger.add(handle, visitId, kept),
                            RecordSaid.Note.PHOTO,
                            kept.photo().id()));
        });
    }

    private static void requireNew(boolean added, RecordSaid.Note note, String id) {
        if (!added) {
            throw new BookException(new RecordSaid.ThereAlready(note, id));
        }
    }
}
