package cornerbook.core.season;

import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The seasons in which a wheel set is on the car: the one now until its change-over, then whole ones; between them it is
 * stored and does not run.
 *
 * @param kind of the set
 * @param from the day that it goes on
 * @param kmPerDay mean distance per day in its seasons, above 0
 * @param changeOver the days of its place
 */
public record SetSeasons(SeasonKind kind, LocalDate from, double kmPerDay, ChangeOver changeOver) {
    public SetSeasons {
        if (!(kmPerDay > 0 && kmPerDay < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("distance is %s km per day, expected above 0".formatted(kmPerDay));
        }
    }

    /**
     * One season.
     *
     * @param from the day that the set goes on
     * @param until the day that it comes off
     */
    public record Season(LocalDate from, LocalDate until, double distanceKm) {}

    /** The first seasons, the one now included. */
    public List<Season> first(int count) {
        var seasons = new ArrayList<Season>();
        var season = from(from);
        for (int n = 0; n < count; n++) {
            seasons.add(season);
            season = after(season);
        }
        return List.copyOf(seasons);
    }

    /**
     * The day on which the set has run a distance from now.
     *
     * @param distanceKm 0 or more
     */
    public LocalDate dayAt(double distanceKm) {
        double leftKm = distanceKm;
        var season = from(from);
        while (leftKm > season.distanceKm()) {
            leftKm -= season.distanceKm();
            season = after(season);
        }
        return season.from().plusDays((long) (leftKm / kmPerDay));
    }

    private Season from(LocalDate on) {
        var off = changeOver.after(on, kind);
        return new Season(on, off, kmPerDay * ChronoUnit.DAYS.between(on, off));
    }

    private Season after(Season season) {
        return switch (kind) {
            case ALL_SEASON -> from(season.until());
            case SUMMER -> from(changeOver.after(season.until(), SeasonKind.WINTER));
            case WINTER -> from(changeOver.after(season.until(), SeasonKind.SUMMER));
        };
    }
}
