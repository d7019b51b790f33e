package cornerbook.app.book.appointment;

import cornerbook.app.book.appointment.Appointment.Because;

/**
 * An appointment as a plan of many would have it.
 *
 * @param entryId of what is changed; sent again it counts once
 * @param id of the appointment
 * @param seenTurn by which it was seen; {@link #NEW} of one that there is not yet
 * @param because with a reason
 */
public record PlannedTurn(String entryId, String id, int seenTurn, String vehicleId, Plan plan, Because because) {
    /** Its customer is still to agree. */
    public static final int NEW = -1;

    boolean isNew() {
        return seenTurn == NEW;
    }
}
