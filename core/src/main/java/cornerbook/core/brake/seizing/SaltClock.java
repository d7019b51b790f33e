package cornerbook.core.brake.seizing;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;

/**
 * The time that rusts guides, in months: brackets rust while there is salt on the road, and little in a dry summer. Of what a
 * year brings, nine tenths come from November to March (common practice, no source), so that a whole year counts 12 months
 * and each of those five counts a little over two.
 */
public final class SaltClock {
    private static final double MONTHS_PER_YEAR = 12;
    private static final double DAYS_PER_YEAR = 365.25;
    private static final double WINTER_SHARE = 0.9;
    private static final Month FIRST_OF_WINTER = Month.NOVEMBER;
    private static final Month LAST_OF_WINTER = Month.MARCH;
    /** 1 November to 31 March, with a quarter of a leap day. */
    private static final double WINTER_DAYS = 151.25;

    private static final double PER_WINTER_DAY = MONTHS_PER_YEAR * WINTER_SHARE / WINTER_DAYS;
    private static final double PER_SUMMER_DAY = MONTHS_PER_YEAR * (1 - WINTER_SHARE) / (DAYS_PER_YEAR - WINTER_DAYS);

    private SaltClock() {}

    /**
     * Months from one day to another.
     *
     * @param until not before {@code from}
     */
    public static double months(LocalDate from, LocalDate until) {
        if (until.isBefore(from)) {
            throw new IllegalArgumentException(
                    "from %s until %s, expected no day before the first".formatted(from, until));
        }
        double months = 0;
        var day = from;
        while (day.isBefore(until)) {
            var firstOfNext = day.withDayOfMonth(1).plusMonths(1);
            var end = firstOfNext.isBefore(until) ? firstOfNext : until;
            months += ChronoUnit.DAYS.between(day, end) * (isWinter(day.getMonth()) ? PER_WINTER_DAY : PER_SUMMER_DAY);
            day = end;
        }
        return months;
    }

    private static boolean isWinter(Month month) {
        return month.compareTo(FIRST_OF_WINTER) >= 0 || month.compareTo(LAST_OF_WINTER) <= 0;
    }
}
