package cornerbook.app.book.visit;

import java.time.LocalDate;

/** A re-torque that is due and not recorded yet. */
public record OpenRetorque(
        String visitId,
        String vehicleId,
        String vehicleName,
        String plate,
        double dueOdometerKm,
        LocalDate dueDate,
        double torqueNm) {}
