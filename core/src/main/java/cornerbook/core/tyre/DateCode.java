package cornerbook.core.tyre;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Week and year of manufacture of a tyre (49 CFR 574.5). Week 01 is the first full calendar week, Sunday to Saturday, and
 * the last week of a year may run up to six days into the next. A week 53 is taken in each year, because it is moulded by
 * makers who count otherwise; where the rule's year has only 52 weeks it is the week after the last.
 *
 * @param week 1 to 53
 * @param year 2000 to 2099
 */
public record DateCode(int week, int year) {
    private static final double DAYS_PER_YEAR = 365.25;
    private static final Pattern FOUR_DIGITS = Pattern.compile("[0-9]{4}");

    /** Refuses weeks and years that a code of four digits cannot mean. */
    public DateCode {
        if (week < 1 || week > 53) {
            throw new Refused(new TyreSaid.NoWeek(twoDigits(week)));
        }
        if (year < 2000 || year > 2099) {
            throw new IllegalArgumentException("year of manufacture is %s, expected 2000 to 2099".formatted(year));
        }
    }

    /**
     * Four digits, week and year, as "3519".
     *
     * @throws IllegalArgumentException with one sentence when the digits are no week and year
     */
    public static DateCode parse(String digits) {
        if (!FOUR_DIGITS.matcher(digits).matches()) {
            throw new Refused(new TyreSaid.NoDateCode(Quoted.of(digits)));
        }
        return new DateCode(Integer.parseInt(digits.substring(0, 2)), 2000 + Integer.parseInt(digits.substring(2)));
    }

    /** First day, a Sunday, of the week of manufacture. */
    public LocalDate dated() {
        return LocalDate.of(year, 1, 1)
                .with(TemporalAdjusters.firstInMonth(DayOfWeek.SUNDAY))
                .plusWeeks(week - 1L);
    }

    /**
     * Age on a day, years of 365.25 days, counted from {@link #dated()}.
     *
     * @throws IllegalArgumentException when the day is before the week of manufacture
     */
    public double ageYears(LocalDate day) {
        if (day.isBefore(dated())) {
            throw new Refused(new TyreSaid.MadeLater(toString(), dated(), day));
        }
        return ChronoUnit.DAYS.between(dated(), day) / DAYS_PER_YEAR;
    }

    /**
     * The first day on which the tyre is so old.
     *
     * @param years 0 or more, years of 365.25 days
     */
    public LocalDate reaches(double years) {
        return dated().plusDays((long) Math.ceil(years * DAYS_PER_YEAR));
    }

    @Override
    public String toString() {
        return twoDigits(week) + twoDigits(year - 2000);
    }

    private static String twoDigits(int number) {
        return String.format(Locale.ROOT, "%02d", number);
    }
}
