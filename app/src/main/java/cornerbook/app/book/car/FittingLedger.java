package cornerbook.app.book.car;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Keeps which wheel runs at which corner from which odometer to which. */
public final class FittingLedger {
    private final Handle handle;

    public FittingLedger(Handle handle) {
        this.handle = handle;
    }

    /** All fittings of a car, anew: what they are follows from its visits, and a visit may come in late. */
    public void rewrite(CarHistory history) {
        handle.execute(
                "delete from fitting where vehicle_id = ?", history.vehicle().id());
        for (var visit : history.visits()) {
            change(history.vehicle().id(), visit, visit.arrivedOn());
            change(history.vehicle().id(), visit, visit.leftOn());
        }
    }

    /** From this visit on the wheels run where {@code wheelAt} says. */
    private void change(String vehicleId, Visit visit, Map<Corner, String> wheelAt) {
        // Close all that move before any opens: two wheels that swap corners must not stand at one corner in between.
        var closing = handle.prepareBatch(
                "update fitting set to_date = ?, to_odometer_km = ? where to_date is null and ((vehicle_id = ? and corner = ? and wheel_tag <> ?) or (wheel_tag = ? and corner <> ?))");
        wheelAt.forEach((corner, tag) -> closing.add(
                visit.date().toString(), visit.odometerKm(), vehicleId, corner.name(), tag, tag, corner.name()));
        closing.execute();
        var opening = handle.prepareBatch(
                "insert into fitting (wheel_tag, vehicle_id, corner, from_date, from_odometer_km) select ?, ?, ?, ?, ? where not exists (select 1 from fitting where wheel_tag = ? and corner = ? and to_date is null)");
        wheelAt.forEach((corner, tag) -> opening.add(
                tag, vehicleId, corner.name(), visit.date().toString(), visit.odometerKm(), tag, corner.name()));
        opening.execute();
    }
}
