package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.picture.QrCode;
import cornerbook.app.request.Told;
import cornerbook.core.days.PlannedWork;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The address by which a customer picks a day, which the book does not keep.
 *
 * @param until the last day that may be picked
 * @param asMessage opens a message to the customer's telephone; null where there is none or the customer does not want it
 * @param asMail the same by e-mail
 * @param secret by which the shop's own server sends it; null where there is none or the customer does not want it
 */
public record AskedPage(
        Appointment.Car car,
        PlannedWork work,
        LocalDate until,
        String address,
        @Nullable String asMessage,
        @Nullable String asMail,
        @Nullable String secret) {
    /** To be read by a telephone. */
    public String code() {
        return QrCode.svg(address, Told.labels("app/desk/days").of("pick-code"));
    }
}
