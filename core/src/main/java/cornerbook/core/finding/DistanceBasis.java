package cornerbook.core.finding;

import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;

/** Where the distance per day of a season comes from. */
public sealed interface DistanceBasis extends Said {
    record OwnSeasons(int seasons) implements DistanceBasis {}

    record CarsOfTheBook(int cars) implements DistanceBasis {}

    record UsualDistance(PlusMinus perDay) implements DistanceBasis {}
}
