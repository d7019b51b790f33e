package cornerbook.app.book.knowledge;

import cornerbook.app.knowledge.KnowledgeFile;
import cornerbook.core.finding.OthersKnowledge;
import java.time.Instant;

/**
 * What was taken in of other shops' knowledge.
 *
 * @param key that signed it
 * @param person who took it in; empty where nobody was named
 */
public record TakenKnowledge(String id, KnowledgeFile file, TrustedKey key, String person, Instant madeAt) {
    /** For the book to learn from its own beside it. */
    public OthersKnowledge others() {
        return file.as(key.name());
    }
}
