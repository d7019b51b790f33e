package cornerbook.app.book.visit;

import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A re-torque that is due and not recorded yet.
 *
 * @param torqueNm as it is known of the car today; null while nobody has looked it up
 * @param tightenedTo that torque in words
 */
public record OpenRetorque(
        String visitId,
        String vehicleId,
        String vehicleName,
        String plate,
        double dueOdometerKm,
        LocalDate dueDate,
        @Nullable Double torqueNm,
        Said tightenedTo) {}
