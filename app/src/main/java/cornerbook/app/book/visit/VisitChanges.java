package cornerbook.app.book.visit;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.car.ChangeRows;
import cornerbook.app.book.car.FittingLedger;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Puts right date and odometer of a visit, and keeps what stood there. Runs inside the caller's transaction. */
public final class VisitChanges {
    private final Handle handle;
    private final ChangeRows rows;

    public VisitChanges(Handle handle, String vehicleId) {
        this.handle = handle;
        this.rows = new ChangeRows(handle, "visit_change", vehicleId);
    }

    /**
     * The visit is another now; what follows from the order of the visits and their odometers is made anew.
     *
     * @param history the car as it stands
     * @throws BookException when the visits could not stand so
     */
    void apply(CarHistory history, Visit before, Visit after, String reason, LocalDate day) {
        if (reason.isBlank()) {
            throw new BookException(new VisitSaid.NoReason());
        }
        var visits = VisitLedger.replaced(history, after).visits().stream()
                .sorted(Comparator.comparing(Visit::date).thenComparingDouble(Visit::odometerKm))
                .toList();
        var changed = new CarHistory(history.vehicle(), history.customer(), history.sets(), visits);
        VisitLedger.refuseProblems(changed);
        new TableRow("visit")
                .set("id", after.id())
                .set("visit_date", after.date())
                .set("odometer_km", after.odometerKm())
                .update(handle, List.of("id"));
        keepChanged(
                after.id(),
                VisitValue.DATE,
                before.date().toString(),
                after.date().toString(),
                reason,
                day);
        keepChanged(after.id(), VisitValue.ODOMETER, written(before), written(after), reason, day);
        new CarWriter(handle).countChange(after.id());
        new FittingLedger(handle).rewrite(changed);
        new RetorqueLedger(within(handle)).rewrite(changed);
    }

    private void keepChanged(String visitId, VisitValue value, String was, String now, String reason, LocalDate day) {
        if (!was.equals(now)) {
            keep(new VisitChange(visitId, value.written(), was, now, reason, day));
        }
    }

    /** Puts a change behind those that are kept. */
    public void keep(VisitChange change) {
        rows.next()
                .set("visit_id", change.visitId())
                .set("what", change.what())
                .set("before_text", change.before())
                .set("after_text", change.after())
                .set("reason", change.reason())
                .set("changed_on", change.on())
                .insert(handle);
    }

    /** All changes, earliest first. */
    public List<VisitChange> list() {
        return rows.list((row, context) -> new VisitChange(
                row.getString("visit_id"),
                row.getString("what"),
                row.getString("before_text"),
                row.getString("after_text"),
                row.getString("reason"),
                LocalDate.parse(row.getString("changed_on"))));
    }

    private static String written(Visit visit) {
        return BigDecimal.valueOf(visit.odometerKm()).stripTrailingZeros().toPlainString() + " km";
    }
}
