package cornerbook.core.finding;

import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** Where the distance per day of a season comes from. Others' cars are null where they taught nothing of it. */
public sealed interface DistanceBasis extends Said {
    /**
     * Seasons that the car has run.
     *
     * @param own how much of the distance they are
     */
    record OwnSeasons(int seasons, OwnShare own, @Nullable KnowledgeOrigin others) implements DistanceBasis {}

    record CarsOfTheBook(int cars, @Nullable KnowledgeOrigin others) implements DistanceBasis {}

    /** No car of the book has run such a season. */
    record CarsOfOthers(PlusMinus perDay, KnowledgeOrigin others) implements DistanceBasis {}

    record UsualDistance(PlusMinus perDay) implements DistanceBasis {}
}
