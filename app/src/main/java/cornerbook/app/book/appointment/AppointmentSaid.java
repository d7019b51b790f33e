package cornerbook.app.book.appointment;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What people are told when the book refuses something of an appointment. */
public interface AppointmentSaid extends Said {
    record NoAppointment() implements AppointmentSaid {}

    /** The same car is to come on that day already. */
    record AlreadyThatDay(String car, LocalDate day) implements AppointmentSaid {}

    record DayIsPast(LocalDate day, LocalDate today) implements AppointmentSaid {}

    record DayTooFar(LocalDate day, LocalDate last) implements AppointmentSaid {}

    record MinutesOutOfRange(Amount least, Amount most) implements AppointmentSaid {}

    record NoteTooLong(int most) implements AppointmentSaid {}

    record ReasonMissing() implements AppointmentSaid {}

    record ChangedMeanwhile() implements AppointmentSaid {}

    /** Nobody can have failed to come on a day that has not been. */
    record NotYetMissed(LocalDate day) implements AppointmentSaid {}

    /** The shop has answered the wish, or another took its place. */
    record WishIsAnswered() implements AppointmentSaid {}

    /** Its car is here. */
    record HasCome() implements AppointmentSaid {}
}
