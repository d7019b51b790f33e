package cornerbook.app.book.visit;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.torque.TorqueSaid;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A re-torque that is due and not recorded yet.
 *
 * @param torqueNm as it is known of the car today; null while nobody has looked it up
 */
public record OpenRetorque(
        String visitId,
        String vehicleId,
        String vehicleName,
        String plate,
        double dueOdometerKm,
        LocalDate dueDate,
        @Nullable Double torqueNm) {
    /** To what its wheels are tightened. */
    public Said tightenedTo() {
        return new TorqueSaid.TightenedTo(torqueNm == null ? null : Amount.of(torqueNm, "N·m"));
    }
}
