package cornerbook.app.book.year;

import java.time.LocalDate;

/** A visit that stands behind a number of the year. */
public record VisitOfYear(LocalDate day, String visitId, String vehicleId, String car, String plate, String customer) {}
