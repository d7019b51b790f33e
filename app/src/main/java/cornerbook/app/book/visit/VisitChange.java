package cornerbook.app.book.visit;

import java.time.LocalDate;

/**
 * The date or the odometer of a visit that was put right.
 *
 * @param what which value, in words, as "odometer"
 * @param before as "382000 km"
 */
public record VisitChange(String visitId, String what, String before, String after, String reason, LocalDate on) {}
