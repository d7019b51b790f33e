package cornerbook.app.calibration.fleet;

import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** The days on which the wheels of one car are changed, spring and autumn, over the whole time that is lived. */
record Calendar(LocalDate first, int days, List<Change> changes) {
    /** The middle of April and the 20th of October, give or take: common practice, no source. */
    static final int SPRING_DAY = 105;

    static final int AUTUMN_DAY = 293;
    static final double SPREAD_DAYS = 8;

    /**
     * A change-over.
     *
     * @param on the kind of wheels that goes on
     */
    record Change(int day, SeasonKind on) {}

    /** From 1 January of a year. */
    static Calendar of(int firstYear, int years, RandomGenerator random) {
        var first = LocalDate.of(firstYear, 1, 1);
        var changes = new ArrayList<Change>();
        for (int year = firstYear; year < firstYear + years; year++) {
            changes.add(new Change(day(first, year, SPRING_DAY, random), SeasonKind.SUMMER));
            changes.add(new Change(day(first, year, AUTUMN_DAY, random), SeasonKind.WINTER));
        }
        return new Calendar(
                first, (int) ChronoUnit.DAYS.between(first, LocalDate.of(firstYear + years, 1, 1)), changes);
    }

    int dayOfYear(int day) {
        return date(day).getDayOfYear();
    }

    LocalDate date(int day) {
        return first.plusDays(day);
    }

    int dayOf(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(first, date);
    }

    private static int day(LocalDate first, int year, int dayOfYear, RandomGenerator random) {
        int off = Math.clamp(Math.round(SPREAD_DAYS * random.nextGaussian()), -20, 20);
        return (int) ChronoUnit.DAYS.between(first, LocalDate.ofYearDay(year, dayOfYear + off));
    }
}
