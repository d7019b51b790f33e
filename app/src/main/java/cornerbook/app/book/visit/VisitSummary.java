package cornerbook.app.book.visit;

import java.time.LocalDate;

/**
 * A visit as a list shows it.
 *
 * @param readings how many readings it has so far
 */
public record VisitSummary(
        String visitId,
        String vehicleId,
        String vehicleName,
        String plate,
        String customerName,
        LocalDate date,
        int readings,
        VisitState state) {}
