package cornerbook.app.exchange.card;

import cornerbook.core.say.Said;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A card of a file.
 *
 * @param number of the card in the file, from 1
 * @param name may be empty where the card is refused
 * @param phone the preferred one
 * @param email the preferred one
 * @param language tag of the preferred one that papers are written in
 * @param refused why nothing of it is taken; null where it is
 * @param notes what of it is not taken
 */
public record PersonCard(
        int number,
        String name,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String language,
        @Nullable Said refused,
        List<Said> notes) {
    public PersonCard {
        notes = List.copyOf(notes);
    }
}
