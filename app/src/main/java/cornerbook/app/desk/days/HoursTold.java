package cornerbook.app.desk.days;

import cornerbook.app.request.Told;
import java.util.Locale;

/** A number of minutes as people of a shop say it: "2 h 05". */
public final class HoursTold {
    private static final int MINUTES_OF_HOUR = 60;

    private HoursTold() {}

    public static String of(int minutes) {
        return say("hours", minutes);
    }

    /** The same, that a day has too much. */
    public static String tooMuch(int minutes) {
        return say("too-much", minutes);
    }

    private static String say(String label, int minutes) {
        return Told.labels("app/desk/days")
                .of(
                        label,
                        "hours",
                        minutes / MINUTES_OF_HOUR,
                        "minutes",
                        String.format(Locale.ROOT, "%02d", minutes % MINUTES_OF_HOUR));
    }
}
