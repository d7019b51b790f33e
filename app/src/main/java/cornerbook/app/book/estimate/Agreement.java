package cornerbook.app.book.estimate;

import cornerbook.app.book.people.Secret;
import cornerbook.words.Language;
import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the customer said to an estimate.
 *
 * @param name who said so, of the customer's side
 * @param contact by what it was said, as a telephone number; may be empty
 * @param words exactly what was agreed to
 * @param signature the path of what was drawn, on a plane of 1000 by 300; null where nothing was
 * @param answers by the place of a line in the estimate; lines that nobody asked about are left out
 * @param person who took it down; empty where the customer did
 */
public record Agreement(
        String id,
        String estimateId,
        Way way,
        String name,
        String contact,
        Language language,
        String words,
        @Nullable String signature,
        Map<Integer, Boolean> answers,
        String person,
        Instant madeAt) {
    public Agreement {
        answers = Map.copyOf(answers);
    }

    /** How it was said. */
    public enum Way {
        /** With the hand, on a tablet of the shop. */
        SIGNED,
        /** Over an address in the shop's network. */
        LINK,
        TELEPHONE,
        SPOKEN
    }

    /** SHA-256 (FIPS 180-4) of the words in UTF-8, in hexadecimal figures. */
    public String hash() {
        return hash(words);
    }

    /** The same of words that are only read yet. */
    public static String hash(String words) {
        return Secret.hash(words);
    }
}
