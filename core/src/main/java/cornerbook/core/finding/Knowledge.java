package cornerbook.core.finding;

import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.WearKnowledge;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a book has learned from all its cars, for each car's forecast to start from. Where its own cars say nothing, other shops'
 * cars answer if the book has taken in what they taught, else what is usual.
 *
 * @param learnedOn the day; null when nothing was learned and the defaults serve
 * @param distances by season kind; a kind that is missing has the others', or the default
 * @param seizing hazard of pads; null when no cleaning of guides is in the book, and the priors serve
 * @param others beside which it was learned; null when nothing was taken in
 */
public record Knowledge(
        @Nullable LocalDate learnedOn,
        WearKnowledge wear,
        Map<SeasonKind, DistancePrior> distances,
        @Nullable LearnedSeizing seizing,
        @Nullable OthersKnowledge others) {
    /** Nothing learned. */
    public static final Knowledge NONE = new Knowledge(null, WearKnowledge.NONE, Map.of(), null);

    public Knowledge {
        distances = Map.copyOf(distances);
    }

    /** From its own cars alone. */
    public Knowledge(
            @Nullable LocalDate learnedOn,
            WearKnowledge wear,
            Map<SeasonKind, DistancePrior> distances,
            @Nullable LearnedSeizing seizing) {
        this(learnedOn, wear, distances, seizing, null);
    }

    /** What is known of the distance in seasons of a kind. */
    public DistancePrior distance(SeasonKind season) {
        var own = distances.get(season);
        if (own != null) {
            return own;
        }
        return others == null ? DistancePrior.DEFAULT : others.knowledge().distance(season);
    }

    /** What is known of wear; empty when no such car was ever read, here or elsewhere. */
    public Optional<WearKnowledge.Row> wear(DriveLayout drive, SeasonKind season, @Nullable String tyreModel) {
        return others == null
                ? wear.find(drive, season, tyreModel)
                : wear.find(drive, season, tyreModel, others.knowledge().wear());
    }

    /** Where a number comes from as far as others' cars taught it; null where they taught nothing of it. */
    private @Nullable KnowledgeOrigin origin(Function<OthersKnowledge, Optional<KnowledgeOrigin>> number) {
        return Optional.ofNullable(others).flatMap(number).orElse(null);
    }

    public @Nullable KnowledgeOrigin originOfWear(DriveLayout drive, SeasonKind season, @Nullable String tyreModel) {
        return origin(known -> known.ofWear(drive, season, tyreModel));
    }

    public @Nullable KnowledgeOrigin originOfDistance(SeasonKind season) {
        return origin(known -> known.ofDistance(season));
    }

    public @Nullable KnowledgeOrigin originOfSeizing() {
        return origin(OthersKnowledge::ofSeizing);
    }
}
