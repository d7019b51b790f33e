package cornerbook.core.changeover;

import cornerbook.core.season.ChangeOver;
import cornerbook.core.season.Climate;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * A place with the days on which cars are changed over there, by its climate and by the law of the car's place; found once for each
 * law. The days fall alike in all years.
 */
public final class ChangeOverOfPlace {
    /** A year without a 29 February, whose days all years have. */
    private static final LocalDate ANY_YEAR = LocalDate.of(2027, 1, 1);

    private final Climate climate;
    private final Map<Optional<WinterLaw>, ChangeOver> byLaw = new ConcurrentHashMap<>();

    public ChangeOverOfPlace(Climate climate) {
        this.climate = climate;
    }

    public Climate climate() {
        return climate;
    }

    /** The days of the place; the usual ones for a season that its climate does not have. */
    public ChangeOver under(Optional<WinterLaw> law) {
        return byLaw.computeIfAbsent(law, this::find);
    }

    private ChangeOver find(Optional<WinterLaw> law) {
        var days = ChangeOverDays.of(
                DailyNormals.of(climate), ChangeOverDays.USUAL_SPREAD_C, law.orElse(null), null, ANY_YEAR);
        return new ChangeOver(
                turn(days.spring(), ChangeOver.USUAL.spring()), turn(days.autumn(), ChangeOver.USUAL.autumn()));
    }

    private static ChangeOver.Turn turn(@Nullable ChangeOverSeason season, ChangeOver.Turn usual) {
        return season == null
                ? usual
                : new ChangeOver.Turn(
                        MonthDay.from(season.best()),
                        new ChangeOver.Days(
                                MonthDay.from(season.from()), MonthDay.from(season.until()), season.byLaw()));
    }
}
