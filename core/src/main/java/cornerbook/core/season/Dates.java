package cornerbook.core.season;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How a day is written for people. */
public final class Dates {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private Dates() {}

    /** The day as "20 Oct 2027". */
    public static String written(LocalDate day) {
        return DAY.format(day);
    }
}
