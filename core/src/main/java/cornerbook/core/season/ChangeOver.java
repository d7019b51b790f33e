package cornerbook.core.season;

import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.time.MonthDay;
import org.jspecify.annotations.Nullable;

/**
 * When a car comes in next for its change-over, by the days of its place; an all-season car comes after half a year (common
 * practice, no source). An agreed date outranks it.
 *
 * @param spring when winter wheels come off
 * @param autumn when summer wheels come off
 */
public record ChangeOver(Turn spring, Turn autumn) {
    /**
     * Where the climate of the place is not known: winter wheels come off from 15 April, summer wheels from 20 October. Common
     * practice, no source.
     */
    public static final ChangeOver USUAL = new ChangeOver(Turn.of(MonthDay.of(4, 15)), Turn.of(MonthDay.of(10, 20)));

    /** A change-over sooner than this after a visit belongs to the season that has just ended. */
    private static final int LEAST_DAYS = 60;

    private static final int HALF_YEAR_MONTHS = 6;

    /**
     * The change-over of one half of a year.
     *
     * @param due the day that a car is expected
     * @param days the days of least risk, {@code due} among them; null where the climate does not tell
     */
    public record Turn(MonthDay due, @Nullable Days days) {
        /** A day alone. */
        public static Turn of(MonthDay due) {
            return new Turn(due, null);
        }
    }

    /**
     * The days of least risk.
     *
     * @param byLaw whether the law, and not the climate alone, sets an end of them
     */
    public record Days(MonthDay from, MonthDay until, boolean byLaw) {}

    /** The day on which wheels of this kind, fitted on {@code fitted}, are due to come off. */
    public LocalDate after(LocalDate fitted, SeasonKind kind) {
        return kind == SeasonKind.ALL_SEASON
                ? fitted.plusMonths(HALF_YEAR_MONTHS)
                : ofWheelsThatStay(fitted.plusDays(LEAST_DAYS - 1), kind);
    }

    /** The day on which wheels of this kind that stay on the car on {@code day} are due to come off, however soon. */
    public LocalDate ofWheelsThatStay(LocalDate day, SeasonKind kind) {
        if (kind == SeasonKind.ALL_SEASON) {
            return day.plusMonths(HALF_YEAR_MONTHS);
        }
        var due = turn(kind).due().atYear(day.getYear());
        return due.isAfter(day) ? due : due.plusYears(1);
    }

    /** The change-over at which wheels of this kind, winter or summer, come off. */
    public Turn turn(SeasonKind kind) {
        return kind == SeasonKind.WINTER ? spring : autumn;
    }

    /** The kind of wheels that a car with two sets leaves on at this time of the year: winter from October to March. */
    public static SeasonKind leavingOn(LocalDate date) {
        return date.getMonthValue() >= 10 || date.getMonthValue() <= 3 ? SeasonKind.WINTER : SeasonKind.SUMMER;
    }
}
