package cornerbook.app.book.car;

import cornerbook.app.book.verdict.KeptVerdict;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A car as a list shows it.
 *
 * @param verdict what the book has of it, however old
 */
public record VehicleSummary(
        String id,
        String name,
        String plate,
        String customerName,
        @Nullable LocalDate lastVisit,
        KeptVerdict verdict) {
    /** Selects what {@link #of} reads, from {@code vehicle}, {@code customer} and what {@link KeptVerdict#JOIN} joins. */
    static final String COLUMNS =
            "vehicle.id, vehicle.name, vehicle.plate, customer.name as customer_name, (select max(visit_date) from visit where visit.vehicle_id = vehicle.id and visit.cancelled = 0) as last_visit, "
                    + KeptVerdict.COLUMNS;

    static VehicleSummary of(ResultSet row) throws SQLException {
        return new VehicleSummary(
                row.getString("id"),
                row.getString("name"),
                row.getString("plate"),
                row.getString("customer_name"),
                CarReader.date(row, "last_visit"),
                KeptVerdict.of(row));
    }
}
