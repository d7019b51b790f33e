package cornerbook.core.brake.seizing.judge;

import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.finding.OwnShare;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said of the chance that a pad seizes. */
public interface SeizingSaid extends Said {
    /** What a piece of evidence is. */
    enum Label implements SeizingSaid {
        GUIDES_CLEANED,
        CHANCE_OF_SEIZING,
        INTERVAL,
        EXPOSURE
    }

    /** How something was come by. */
    enum Ground implements SeizingSaid {
        USUAL_USE,
        USE_AS_NOTED,
        SEIZING
    }

    /** Why it is not judged. */
    enum NotJudged implements SeizingSaid {
        NO_CLEANING
    }

    record Title(int pads, Chance chance) implements SeizingSaid {}

    record StayFree() implements SeizingSaid {}

    record MaySeize() implements SeizingSaid {}

    record LikelyToSeize() implements SeizingSaid {}

    record MonthsAgo(Amount months) implements SeizingSaid {}

    record LongestAgo(int pads) implements SeizingSaid {}

    record ChanceWithin(Chance chance, Between limits) implements SeizingSaid {}

    record FromThisCar(int padTimes, OwnShare own) implements SeizingSaid {}

    record FromTheBook(
            int padTimes,
            int cars,
            LocalDate learnedOn,
            OwnShare own,
            @Nullable KnowledgeOrigin others) implements SeizingSaid {}

    /** No pad of the book has a time. */
    record FromOthers(KnowledgeOrigin others, OwnShare own) implements SeizingSaid {}

    record Months(int months) implements SeizingSaid {}

    record KeepsChance(Amount risk, Said citation) implements SeizingSaid {}

    record Exposure(Amount salt, boolean garaged, Amount perYear, Amount friction) implements SeizingSaid {}
}
