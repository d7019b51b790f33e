package cornerbook.app.cli.knowledge;

import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.say.Said;

/** What is told of other shops' knowledge and of keys. */
sealed interface KnowledgeVerbSaid extends Said {
    /** A pair of keys was made. */
    record KeyMade(String file, String fingerprint) implements KnowledgeVerbSaid {}

    record Trusted(String name, String fingerprint) implements KnowledgeVerbSaid {}

    record TrustedNoLonger(String fingerprint) implements KnowledgeVerbSaid {}

    record Taken(KnowledgeOrigin origin) implements KnowledgeVerbSaid {}

    record TakenBack() implements KnowledgeVerbSaid {}

    record NothingStands() implements KnowledgeVerbSaid {}

    record Standing(KnowledgeOrigin origin, Said behind) implements KnowledgeVerbSaid {}

    /** A file that was looked at. */
    record WouldBring(KnowledgeOrigin origin, Said behind) implements KnowledgeVerbSaid {}

    /** A number before and after. */
    record Change(Said number, Said now, Said then) implements KnowledgeVerbSaid {}

    record NeedsFile(String action) implements KnowledgeVerbSaid {}

    record TakesNoFile(String action) implements KnowledgeVerbSaid {}

    record NoSuchAction(String word) implements KnowledgeVerbSaid {}
}
