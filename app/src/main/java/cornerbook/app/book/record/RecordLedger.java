package cornerbook.app.book.record;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.bay.BayRows;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.car.WheelChanges;
import cornerbook.app.book.photo.PhotoLedger;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TakenIds;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.ReadingLedger;
import cornerbook.app.book.visit.RetorqueLedger;
import cornerbook.app.book.visit.VisitChanges;
import cornerbook.app.book.visit.VisitLedger;
import cornerbook.core.assess.IdentityRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** All that the book has of a car, to go from one book to another. */
public final class RecordLedger {
    private final Transactions store;

    public RecordLedger(Transactions store) {
        this.store = store;
    }

    /** A car with all that the book has of it, photos too. */
    public Optional<CarRecord> find(String vehicleId) {
        return store.read(handle -> new CarReader(handle).find(vehicleId).map(history -> {
            var notes = new HashMap<String, VisitNotes>();
            history.visits().stream()
                    .map(visit -> visit.id())
                    .forEach(id -> Optional.of(notes(handle, id))
                            .filter(found -> !found.isEmpty())
                            .ifPresent(found -> notes.put(id, found)));
            return new CarRecord(
                    history,
                    notes,
                    new WheelChanges(handle, vehicleId).list(),
                    new VisitChanges(handle, vehicleId)
                            .list().stream()
                                    .filter(change -> history.visits().stream()
                                            .anyMatch(visit -> visit.id().equals(change.visitId())))
                                    .toList());
        }));
    }

    /** What was entered at a visit beside its readings, with the content of its photos. */
    public VisitNotes notes(String visitId) {
        return store.read(handle -> notes(handle, visitId));
    }

    private static VisitNotes notes(Handle handle, String visitId) {
        var rows = new BayRows(handle);
        var rivals = rows.listRivals(visitId);
        return new VisitNotes(
                rows.listTicks(visitId),
                rivals,
                rivals.stream()
                        .flatMap(rival -> rows.findAnswer(rival.reading().id()).stream())
                        .toList(),
                rows.listDepartures(visitId),
                new PhotoLedger(within(handle)).listKept(visitId),
                rows.listAuthors(visitId),
                rows.listRemarks(visitId),
                rows.listDeclined(visitId));
    }

    /** A new car with its visits. */
    public void addCar(CarHistory history) {
        addCars(List.of(history));
    }

    /** New cars of which there is nothing but their histories; as {@link #add}. */
    public List<Customer> addCars(List<CarHistory> histories) {
        return add(histories.stream().map(CarRecord::new).toList());
    }

    /**
     * New cars with all that another book had of them, all or none. Gives the customers that the book knew with other
     * details, as they stand in it now; a detail that a car does not bring is kept.
     *
     * @param records are asked for one after the other; when they fail, none is added
     * @throws BookException when one of them cannot stand, or an id is in the book already
     */
    public List<Customer> add(Iterable<CarRecord> records) {
        return store.write(handle -> {
            var changed = new LinkedHashMap<String, Customer>();
            var writer = new CarWriter(handle);
            for (var record : records) {
                addCar(handle, writer, record.history()).ifPresent(customer -> changed.put(customer.id(), customer));
                addChanges(handle, record);
                record.notes().forEach((visitId, notes) -> addNotes(handle, visitId, notes));
            }
            return List.copyOf(changed.values());
        });
    }

    /** Gives its customer when the book knew other details of it. */
    private static Optional<Customer> addCar(Handle handle, CarWriter writer, CarHistory history) {
        VisitLedger.refuse(IdentityRules.check(history));
        VisitLedger.refuseProblems(history);
        new TakenIds(handle).refuse(history);
        var changed = writer.writeCar(history);
        if (!history.visits().isEmpty()) {
            new RetorqueLedger(within(handle)).change(history, history.visits().getLast());
        }
        return changed;
    }

    private static void addChanges(Handle handle, CarRecord record) {
        var vehicleId = record.history().vehicle().id();
        var wheelChanges = new WheelChanges(handle, vehicleId);
        record.wheelChanges().forEach(wheelChanges::keep);
        var visitChanges = new VisitChanges(handle, vehicleId);
        record.visitChanges().forEach(visitChanges::keep);
    }

    private static void addNotes(Handle handle, String visitId, VisitNotes notes) {
        var rows = new BayRows(handle);
        var readings = new ReadingLedger(within(handle));
        var photos = new PhotoLedger(within(handle));
        notes.ticks().forEach(tick -> requireNew(rows.add(visitId, tick), RecordSaid.Note.TICK, tick.id()));
        notes.rivals()
                .forEach(rival -> requireNew(
                        readings.find(rival.reading().id()).isEmpty() && rows.add(visitId, rival),
                        RecordSaid.Note.READING,
                        rival.reading().id()));
        notes.remarks().forEach(remark -> requireNew(rows.add(visitId, remark), RecordSaid.Note.REMARK, remark.id()));
        notes.declined().forEach(each -> requireNew(rows.add(visitId, each), RecordSaid.Note.DECLINED, each.id()));
        notes.authors().forEach(rows::add);
        notes.answers().forEach(rows::add);
        notes.departures()
                .forEach(departure ->
                        requireNew(rows.add(visitId, departure), RecordSaid.Note.DEPARTURE, departure.id()));
        notes.photos()
                .forEach(kept -> requireNew(
                        photos.add(visitId, kept) == Arrival.STORED,
                        RecordSaid.Note.PHOTO,
                        kept.photo().id()));
    }

    private static void requireNew(boolean added, RecordSaid.Note note, String id) {
        if (!added) {
            throw new BookException(new RecordSaid.ThereAlready(note, id));
        }
    }
}
