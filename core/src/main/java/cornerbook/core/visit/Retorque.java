package cornerbook.core.visit;

import java.time.LocalDate;

/**
 * A re-torque that is due after wheels went on, until it is recorded.
 *
 * @param dueDate estimated from the car's distance per day
 */
public record Retorque(String visitId, double dueOdometerKm, LocalDate dueDate, double torqueNm) {}
