package cornerbook.app.book.car;

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
        long revision) {}
