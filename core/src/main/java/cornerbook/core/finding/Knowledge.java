package cornerbook.core.finding;

import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.WearKnowledge;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a book has learned from all its cars, for each car's forecast to start from.
 *
 * @param learnedOn the day; null when nothing was learned and the defaults serve
 * @param distances by season kind; a kind that is missing has the default
 * @param seizing hazard of pads; null when no cleaning of guides is in the book, and the priors serve
 */
public record Knowledge(
        @Nullable LocalDate learnedOn,
        WearKnowledge wear,
        Map<SeasonKind, DistancePrior> distances,
        @Nullable LearnedSeizing seizing) {
    /** Nothing learned. */
    public static final Knowledge NONE = new Knowledge(null, WearKnowledge.NONE, Map.of(), null);

    public Knowledge {
        distances = Map.copyOf(distances);
    }

    /** What is known of the distance in seasons of a kind. */
    public DistancePrior distance(SeasonKind season) {
        return distances.getOrDefault(season, DistancePrior.DEFAULT);
    }
}
