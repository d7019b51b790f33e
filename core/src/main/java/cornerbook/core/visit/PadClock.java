package cornerbook.core.visit;

import cornerbook.core.brake.CensoredTime;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One pad from one service of its guides to the next, over the visits: when it still moved and when it was found seized.
 * Before the first service that is in the book nothing is known of its time.
 */
final class PadClock {
    private static final double DAYS_PER_MONTH = 365.25 / 12;

    private final List<CensoredTime> times = new ArrayList<>();

    @Nullable
    private LocalDate serviced;

    private double lastFreeMonths;

    /** The pad was moved by hand. */
    void seen(LocalDate date, boolean seized) {
        if (serviced == null || !date.isAfter(serviced)) {
            return;
        }
        double months = months(serviced, date);
        if (seized) {
            times.add(CensoredTime.between(lastFreeMonths, months));
            serviced = null;
        } else {
            lastFreeMonths = months;
        }
    }

    /** Its guides were cleaned and lubricated, and it moved afterwards. */
    void serviced(LocalDate date) {
        end();
        serviced = date;
        lastFreeMonths = 0;
    }

    /** Day of the last service since which it has not been found seized; null when there is none. */
    @Nullable
    LocalDate running() {
        return serviced;
    }

    /** What is known of it, the time that still runs as not ended. */
    List<CensoredTime> times() {
        var all = new ArrayList<>(times);
        if (serviced != null && lastFreeMonths > 0) {
            all.add(CensoredTime.notBy(lastFreeMonths));
        }
        return all;
    }

    static double months(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / DAYS_PER_MONTH;
    }

    private void end() {
        if (serviced != null && lastFreeMonths > 0) {
            times.add(CensoredTime.notBy(lastFreeMonths));
        }
    }
}
