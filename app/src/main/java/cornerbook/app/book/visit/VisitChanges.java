package cornerbook.app.book.visit;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.car.ChangeRows;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Puts right what the book has of a visit, and keeps what stood there. Runs inside the caller's transaction. */
public final class VisitChanges {
    private final Handle handle;
    private final ChangeRows rows;

    public VisitChanges(Handle handle, String vehicleId) {
        this.handle = handle;
        this.rows = new ChangeRows(handle, "visit_change", vehicleId);
    }

    /** Whether an entry of a tablet is in the book already. */
    public boolean has(Because because) {
        return because.entryId() != null
                && handle.select("select 1 from visit_change where entry_id = ?", because.entryId())
                        .mapTo(Integer.class)
                        .findFirst()
                        .isPresent();
    }

    /**
     * The visit is another now; what follows from the order of the visits, their odometers and their wheels is made anew.
     *
     * @param history the car as it stands
     * @throws BookException when the visits could not stand so
     */
    void apply(CarHistory history, Visit before, Visit after, Because because) {
        var moved = movedReadings(before, after, because.reason());
        var righted = after.withReadings(
                Stream.concat(before.readings().stream(), moved.stream()).toList());
        var changed = inOrder(VisitLedger.replaced(history, righted));
        VisitLedger.refuseProblems(changed);
        new TableRow("visit")
                .set("id", after.id())
                .set("visit_date", after.date())
                .set("odometer_km", after.odometerKm())
                .set("technician", after.card().technician())
                .set("notes", after.card().notes())
                .update(handle, List.of("id"));
        var writer = new CarWriter(handle);
        writer.replaceWheels(after);
        writer.writeReadings(after.id(), moved);
        keepChanged(before, after, because);
        var retorques = new RetorqueLedger(within(handle));
        if (!after.leftOn().equals(before.leftOn())) {
            retorques.change(changed, righted);
        }
        retorques.rewrite(changed);
    }

    private static CarHistory inOrder(CarHistory history) {
        return new CarHistory(
                history.vehicle(),
                history.customer(),
                history.sets(),
                history.visits().stream()
                        .sorted(Comparator.comparing(Visit::date).thenComparingDouble(Visit::odometerKm))
                        .toList());
    }

    /** What was read of a wheel that was not there was read of the wheel that was: each as a reading that corrects the one before. */
    private static List<Reading> movedReadings(Visit before, Visit after, String reason) {
        return new StandingReadings(before)
                .all().stream()
                        .flatMap(reading -> wheelNow(reading, before, after).stream()
                                .map(tag -> new Reading(
                                        UUID.randomUUID().toString(),
                                        reading.measure(),
                                        reading.corner(),
                                        tag,
                                        reading.spot(),
                                        reading.value(),
                                        reading.asWritten(),
                                        reading.id(),
                                        reason)))
                        .toList();
    }

    /** The wheel that stood where a reading was taken; empty where it is the one that the reading names, or none is known. */
    private static Optional<String> wheelNow(Reading reading, Visit before, Visit after) {
        var corner = reading.corner();
        var tag = reading.wheelTag();
        if (corner == null
                || tag == null
                || tag.equals(after.arrivedOn().get(corner))
                || tag.equals(after.leftOn().get(corner))) {
            return Optional.empty();
        }
        return Optional.ofNullable(
                tag.equals(before.arrivedOn().get(corner))
                        ? after.arrivedOn().get(corner)
                        : after.leftOn().get(corner));
    }

    /** Keeps what stood in each value that is another now. */
    void keepChanged(Visit before, Visit after, Because because) {
        for (var value : VisitValue.values()) {
            keepChanged(before.id(), value, value.write(before), value.write(after), because);
        }
    }

    /** Keeps what stood in one place, and where it stands since. */
    public void keepChanged(String visitId, VisitValue value, String was, String now, Because because) {
        if (!was.equals(now)) {
            if (because.reason().isBlank()) {
                throw new BookException(new VisitSaid.NoReason());
            }
            keep(
                    new VisitChange(
                            visitId, value.written(), was, now, because.reason(), because.person(), because.on()),
                    because.entryId());
        }
    }

    /** Puts a change that comes from another book behind those that are kept. */
    public void keep(VisitChange change) {
        keep(change, null);
    }

    private void keep(VisitChange change, @Nullable String entryId) {
        rows.next()
                .set("visit_id", change.visitId())
                .set("what", change.what())
                .set("before_text", change.before())
                .set("after_text", change.after())
                .set("reason", change.reason())
                .set("person", change.person())
                .set("changed_on", change.on())
                .set("entry_id", entryId)
                .insert(handle);
    }

    /** The last change of a value of a visit, which it has. */
    VisitChange getLast(String visitId, VisitValue value) {
        return list().stream()
                .filter(change ->
                        change.visitId().equals(visitId) && change.what().equals(value.written()))
                .reduce((first, last) -> last)
                .orElseThrow();
    }

    /** All changes, earliest first. */
    public List<VisitChange> list() {
        return rows.list((row, context) -> new VisitChange(
                row.getString("visit_id"),
                row.getString("what"),
                row.getString("before_text"),
                row.getString("after_text"),
                row.getString("reason"),
                row.getString("person"),
                LocalDate.parse(row.getString("changed_on"))));
    }
}
