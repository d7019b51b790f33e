package cornerbook.app.book.visit;

import java.time.LocalDate;

/**
 * A visit that was opened by mistake: it is kept, and counts nowhere.
 *
 * @param readings how many were taken at it
 * @param cancelled why, by whom and when
 */
public record CancelledVisit(
        String visitId, String vehicleId, LocalDate date, double odometerKm, int readings, VisitChange cancelled) {}
