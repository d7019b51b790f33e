package cornerbook.core.season;

import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.time.MonthDay;

/**
 * When a car comes in next for its change-over: winter wheels come off from 15 April, summer wheels from 20 October; an
 * all-season car comes after half a year. Common practice, no source; an agreed date outranks it.
 */
public final class ChangeOver {
    private static final MonthDay SPRING = MonthDay.of(4, 15);
    private static final MonthDay AUTUMN = MonthDay.of(10, 20);
    /** A change-over sooner than this after a visit belongs to the season that has just ended. */
    private static final int LEAST_DAYS = 60;

    private static final int HALF_YEAR_MONTHS = 6;

    private ChangeOver() {}

    /** The day on which wheels of this kind, fitted on {@code fitted}, are due to come off. */
    public static LocalDate after(LocalDate fitted, SeasonKind kind) {
        return kind == SeasonKind.ALL_SEASON
                ? fitted.plusMonths(HALF_YEAR_MONTHS)
                : ofWheelsThatStay(fitted.plusDays(LEAST_DAYS - 1), kind);
    }

    /** The day on which wheels of this kind that stay on the car on {@code day} are due to come off, however soon. */
    public static LocalDate ofWheelsThatStay(LocalDate day, SeasonKind kind) {
        if (kind == SeasonKind.ALL_SEASON) {
            return day.plusMonths(HALF_YEAR_MONTHS);
        }
        var due = (kind == SeasonKind.WINTER ? SPRING : AUTUMN).atYear(day.getYear());
        return due.isAfter(day) ? due : due.plusYears(1);
    }

    /** The kind of wheels that a car with two sets leaves on at this time of the year: winter from October to March. */
    public static SeasonKind leavingOn(LocalDate date) {
        return date.getMonthValue() >= 10 || date.getMonthValue() <= 3 ? SeasonKind.WINTER : SeasonKind.SUMMER;
    }
}
