package cornerbook.app.demo;

import cornerbook.app.demo.CastMember.LatestVisit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * The days of a car of the cast: in the middle of each rush, and the latest near today, whatever day that is, so that the cast
 * always has something to show.
 */
record RushDays(LocalDate today, LatestVisit latestVisit) implements VisitDays {
    /** Days that a visit may lie before or after the middle of the rush. */
    private static final int AROUND = 13;

    private static final int SHORTEST_SEASON_DAYS = 75;

    /** The latest prepares for the season that today is in. */
    @Override
    public List<LocalDate> draw(RandomGenerator random) {
        List<LocalDate> dates = new ArrayList<>();
        boolean ofToday = latestVisit == LatestVisit.ARRIVED || latestVisit == LatestVisit.MEASURED;
        LocalDate latest = ofToday ? today : today.minusDays(1 + random.nextInt(16));
        var season = Season.of(today);
        if (Season.of(latest) != season) {
            latest = today;
        }
        dates.add(latest);
        LocalDate following = latest;
        while (dates.size() < VISITS) {
            season = Season.opposite(season);
            LocalDate date = Season.rush(season, following.getYear()).plusDays(random.nextInt(2 * AROUND + 1) - AROUND);
            if (date.isAfter(following.minusDays(SHORTEST_SEASON_DAYS))) {
                date = date.minusYears(1);
            }
            dates.addFirst(date);
            following = date;
        }
        return dates;
    }

    @Override
    public LatestVisit progress(LocalDate latest) {
        return latestVisit;
    }
}
