package cornerbook.app.book.appointment;

import java.util.List;

/** How an appointment stands. That a car came nobody has to say: it has a visit of that day. */
public enum AppointmentState implements AppointmentSaid {
    /** The customer would like that day; nobody has confirmed it. */
    ASKED,
    BOOKED,
    CAME,
    /** The car did not come: a fact, which stays. */
    MISSED,
    CALLED_OFF;

    /** Those in which the car is still to come. */
    public boolean isOpen() {
        return this == ASKED || this == BOOKED;
    }

    /** What a new appointment may be. */
    public static List<AppointmentState> ofNew() {
        return List.of(BOOKED, ASKED);
    }
}
