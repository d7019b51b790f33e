package cornerbook.app.desk.knowledge;

import cornerbook.app.book.knowledge.TakenKnowledge;
import cornerbook.app.book.knowledge.TrustedKey;
import cornerbook.core.say.Said;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Other shops' knowledge.
 *
 * @param id of what is sent next, so that it counts once
 * @param standing what counts; null when nothing does
 * @param numbers what it comes to in this book
 * @param looked a file that was looked at and may be taken in; null when none was
 * @param changes what it would change
 * @param text of the file
 * @param error one sentence, empty when nothing was refused
 */
public record OthersPage(
        String id,
        @Nullable TakenKnowledge standing,
        List<NumberChanges.Group> numbers,
        @Nullable TakenKnowledge looked,
        List<NumberChanges.Group> changes,
        List<TrustedKey> keys,
        String text,
        String error) {
    public OthersPage {
        numbers = List.copyOf(numbers);
        changes = List.copyOf(changes);
        keys = List.copyOf(keys);
    }

    public Said origin(TakenKnowledge taken) {
        return taken.others().origin();
    }

    public Said behind(TakenKnowledge taken) {
        return behindOf(taken);
    }

    /** What stands behind a file. */
    public static Said behindOf(TakenKnowledge taken) {
        var extent = taken.file().extent();
        return new OthersPageSaid.Behind(
                extent.visits(), extent.from(), extent.until(), taken.file().release());
    }

    public List<TrustedKey> trusted() {
        return keys.stream().filter(TrustedKey::trusted).toList();
    }
}
