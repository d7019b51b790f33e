package cornerbook.app.book.car;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A car as a list shows it.
 *
 * @param revision rises with each change of its history
 */
public record VehicleSummary(
        String id,
        String name,
        String plate,
        String customerName,
        @Nullable LocalDate lastVisit,
        long revision) {
    static VehicleSummary of(ResultSet row) throws SQLException {
        return new VehicleSummary(
                row.getString("id"),
                row.getString("name"),
                row.getString("plate"),
                row.getString("customer_name"),
                CarReader.date(row, "last_visit"),
                row.getLong("revision"));
    }
}
