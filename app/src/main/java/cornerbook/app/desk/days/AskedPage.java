package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.picture.QrCode;
import cornerbook.app.request.Told;
import cornerbook.core.days.PlannedWork;
import java.time.LocalDate;

/**
 * The address by which a customer picks a day, which the book does not keep.
 *
 * @param until the last day that may be picked
 */
public record AskedPage(Appointment.Car car, PlannedWork work, LocalDate until, String address) {
    /** To be read by a telephone. */
    public String code() {
        return QrCode.svg(address, Told.labels("app/desk/days").of("pick-code"));
    }
}
