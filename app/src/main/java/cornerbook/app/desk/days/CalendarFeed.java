package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.words.Reader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * Appointments as other calendars read them: iCalendar (RFC 5545), the name and how often to look by RFC 7986. Moments are written in
 * UTC (section 3.3.5, form 2), so that nobody has to know the rules of the shop's zone; a day without a time is a date. Of the customer
 * and of notes nothing goes out, of the car its plate.
 */
public final class CalendarFeed {
    private static final int MOST_OCTETS = 75;
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    private final StringBuilder text = new StringBuilder();
    private final ZoneId zone;
    private final Reader reader;

    private CalendarFeed(ZoneId zone, Reader reader) {
        this.zone = zone;
        this.reader = reader;
    }

    /**
     * The whole calendar.
     *
     * @param name that other calendars show it by
     * @param zone of the shop
     * @param reader in whose language it is
     */
    public static String of(String name, List<Appointment> appointments, ZoneId zone, Reader reader) {
        return new CalendarFeed(zone, reader).write(name, appointments);
    }

    private String write(String name, List<Appointment> appointments) {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//Cornerbook//Appointments//EN");
        line("NAME:" + escape(name));
        // Read by those that are older than RFC 7986.
        line("X-WR-CALNAME:" + escape(name));
        line("REFRESH-INTERVAL;VALUE=DURATION:PT15M");
        appointments.forEach(this::event);
        line("END:VCALENDAR");
        return text.toString();
    }

    private void event(Appointment appointment) {
        line("BEGIN:VEVENT");
        line("UID:" + escape(appointment.id()) + "@cornerbook");
        line("DTSTAMP:" + MOMENT.format(appointment.because().madeAt()));
        line("SEQUENCE:" + appointment.turn());
        line("STATUS:" + status(appointment.state()));
        var plan = appointment.plan();
        var time = plan.time();
        if (time == null) {
            line("DTSTART;VALUE=DATE:" + DateTimeFormatter.BASIC_ISO_DATE.format(plan.day()));
        } else {
            Instant start = plan.day().atTime(time).atZone(zone).toInstant();
            line("DTSTART:" + MOMENT.format(start));
            line("DTEND:" + MOMENT.format(start.plusSeconds(plan.minutes() * 60L)));
        }
        line("SUMMARY:" + escape((appointment.car().plate() + " " + reader.say(plan.work())).strip()));
        line("END:VEVENT");
    }

    private static String status(AppointmentState state) {
        return switch (state) {
            case ASKED -> "TENTATIVE";
            case BOOKED, CAME -> "CONFIRMED";
            case MISSED, CALLED_OFF -> "CANCELLED";
        };
    }

    /** As TEXT is written (section 3.3.11), which takes no control characters but line ends and tabs. */
    static String escape(String words) {
        return words.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replaceAll("\r\n?|\n", "\\\\n")
                .replaceAll("[\\p{Cc}&&[^\t]]", "");
    }

    private void line(String line) {
        text.append(fold(line)).append("\r\n");
    }

    /** At most 75 octets a line without its end (section 3.1), and no letter cut through. */
    static String fold(String line) {
        var folded = new StringBuilder();
        int octets = 0;
        for (int at = 0; at < line.length(); at = line.offsetByCodePoints(at, 1)) {
            var letter = Character.toString(line.codePointAt(at));
            int more = letter.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > MOST_OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.append(letter);
            octets += more;
        }
        return folded.toString();
    }
}
