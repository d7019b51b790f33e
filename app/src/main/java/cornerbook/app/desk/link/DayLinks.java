package cornerbook.app.desk.link;

import cornerbook.core.days.PlannedWork;
import java.time.LocalDate;

/** Addresses of the days of the shop, and of what is agreed for them. */
public final class DayLinks {
    /** Behind it stand the secret and {@link #CALENDAR_FILE}. */
    public static final String CALENDAR = "/calendar/";

    public static final String CALENDAR_FILE = ".ics";

    /** Behind it stands the secret by which a customer picks a day without pairing. */
    public static final String PICK = "/pick/";

    private DayLinks() {}

    /** The days of the shop. */
    public static String days() {
        return "/days";
    }

    /** One of them, in its week. */
    public static String days(LocalDate day) {
        return days() + "?day=" + day;
    }

    /** The same, asking for what is left of today. */
    public static String restOfToday() {
        return dayPlan() + "?today=1";
    }

    /** Where a plan of the coming days is proposed. */
    public static String dayPlan() {
        return days() + "/plan";
    }

    /** The shop's own server sends the address by which a customer picks a day. */
    public static String mailDay() {
        return askDay() + "/mail";
    }

    /** Where a customer is asked for a day. */
    public static String askDay() {
        return days() + "/ask";
    }

    /** Where it is said what becomes of a day that a customer would like. */
    public static String dayWish() {
        return days() + "/wish";
    }

    /** The weeks ahead. */
    public static String weeks() {
        return days() + "/weeks";
    }

    /** Where a new appointment is sent. */
    public static String appointments() {
        return "/appointments";
    }

    /** A day is agreed for a car that is looked for. */
    public static String newAppointment() {
        return appointments() + "/new";
    }

    /** The same for one of the cars that a search has found. */
    public static String newAppointmentFor(String query) {
        return newAppointment() + "?q=" + Address.segment(query);
    }

    /** The same for this car. */
    public static String newAppointment(String vehicleId) {
        return newAppointment() + "?car=" + Address.segment(vehicleId);
    }

    /** The same for the car of a visit whose wheels are to be tightened again. */
    public static String appointmentToTighten(String visitId) {
        return newAppointment() + "?visit=" + Address.segment(visitId) + "&work=" + PlannedWork.RETORQUE;
    }

    public static String appointment(String id) {
        return appointments() + "/" + Address.segment(id);
    }

    /** Where somebody says that it is confirmed, missed or called off. */
    public static String appointmentState(String id) {
        return appointment(id) + "/state";
    }
}
