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
        String vehicleName,
        String plate,
        double dueOdometerKm,
        LocalDate dueDate,
        @Nullable Double torqueNm,
        Said tightenedTo,
        Contact contact) {
    /**
     * Who is called.
     *
     * @param phone null where none is known
     * @param last what came of it last; null before anybody asked
     */
    public record Contact(
            String customerId,
            String customerName,
            @Nullable String phone,
            @Nullable CallAnswer last) {
        /** Whether the customer does not want it. */
        public boolean declined() {
            return last != null && last.kind() == CallAnswer.Kind.DECLINED;
        }
    }
}
