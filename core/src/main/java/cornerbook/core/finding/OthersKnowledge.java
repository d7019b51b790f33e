package cornerbook.core.finding;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What other shops' cars taught, for a book to learn from its own beside it, in place of what is usual.
 *
 * @param origin of all of it
 */
public record OthersKnowledge(KnowledgeOrigin origin, Knowledge knowledge) {
    /** Where what is known of wear comes from; empty where no such car was among them. */
    Optional<KnowledgeOrigin> ofWear(DriveLayout drive, SeasonKind season, @Nullable String tyreModel) {
        return knowledge
                .wear()
                .find(drive, season, tyreModel)
                .map(row -> origin.of(row.learned().cars()));
    }

    /** Where the distance in seasons of a kind comes from. */
    Optional<KnowledgeOrigin> ofDistance(SeasonKind season) {
        return Optional.ofNullable(knowledge.distances().get(season)).map(distance -> origin.of(distance.cars()));
    }

    /** Where the hazard of pads comes from. */
    Optional<KnowledgeOrigin> ofSeizing() {
        return Optional.ofNullable(knowledge.seizing()).map(seizing -> origin.of(seizing.cars()));
    }
}
