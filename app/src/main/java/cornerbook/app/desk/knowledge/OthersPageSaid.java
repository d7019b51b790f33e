package cornerbook.app.desk.knowledge;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said of numbers that other shops' knowledge changes. */
public sealed interface OthersPageSaid extends Said {
    /** What tyres of a season on cars of a drive wear by. */
    record WearOf(
            SeasonKind season, DriveLayout drive, @Nullable String tyreModel) implements OthersPageSaid {}

    record DistanceIn(SeasonKind season) implements OthersPageSaid {}

    record Pads() implements OthersPageSaid {}

    record KmPerDay() implements OthersPageSaid {}

    record OneYear(Amount distancePerYear) implements OthersPageSaid {}

    /** A number with how surely it is known. */
    record WithSpread(PlusMinus value) implements OthersPageSaid {}

    record Chance(Amount chance, Between limits) implements OthersPageSaid {}

    /** What stands behind a file. */
    record Behind(long visits, LocalDate from, LocalDate until, String release) implements OthersPageSaid {}
}
