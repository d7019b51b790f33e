package cornerbook.app.book.order;

import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.core.order.judge.CarNeed;

/**
 * What one car may need of an article, with who is called about it.
 *
 * @param visitId by which it is known
 * @param contact with what came of calling about this part
 * @param given pieces that went to the car since that visit
 */
public record NeedOfCar(
        String vehicleId,
        String visitId,
        String vehicleName,
        String plate,
        OpenRetorque.Contact contact,
        CarNeed need,
        int given) {
    /** Whether it still counts: its customer does not want it, or the car has it. */
    public boolean counts() {
        return given == 0 && !contact.declined();
    }
}
