package cornerbook.app.demo;

import cornerbook.app.demo.CastMember.LatestVisit;
import cornerbook.core.corner.SeasonKind;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * The days of a car of the crowd: a shop of many cars has the bays for a part of them each day, so they come over weeks before and
 * after the middle of each rush, most of them near it, and none on a Sunday. How many have been here in a season is told by the day
 * of the year, as in a shop.
 */
record SeasonDays(LocalDate today) implements VisitDays {
    /** The farthest that a visit lies before or after the middle of the rush. */
    private static final int AROUND = 44;

    @Override
    public List<LocalDate> draw(RandomGenerator random) {
        var season = Season.of(today);
        // Winter that is prepared for in January began the year before.
        int year = season == SeasonKind.WINTER && today.getMonth() == Month.JANUARY
                ? today.getYear() - 1
                : today.getYear();
        List<LocalDate> days = new ArrayList<>();
        while (days.size() < VISITS) {
            // The sum of two even draws: most lie near the middle.
            int after = random.nextInt(AROUND + 1) + random.nextInt(AROUND + 1) - AROUND;
            days.addFirst(worked(Season.rush(season, year).plusDays(after)));
            if (season == SeasonKind.SUMMER) {
                year--;
            }
            season = Season.opposite(season);
        }
        return days;
    }

    @Override
    public LatestVisit progress(LocalDate latest) {
        return latest.isBefore(today) ? LatestVisit.FINISHED : LatestVisit.AWAITED;
    }

    private static LocalDate worked(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
    }
}
