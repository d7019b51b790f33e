package cornerbook.app.book.rack;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that a count found otherwise than the book had it when the count ended.
 *
 * @param code the tag that was scanned; of a set that was not, the tags of its wheels
 * @param key null when the book knows no such wheel
 * @param bookPlace where the book had it; null when it had it nowhere in the store
 * @param foundPlace where it was scanned; null when it was not
 * @param answer what was done about it; null while nobody has done anything
 */
public record StockDifference(
        String id,
        Kind kind,
        String code,
        KeptSet.@Nullable Key key,
        @Nullable String bookPlace,
        @Nullable String foundPlace,
        @Nullable Answer answer) {
    /** What is otherwise. */
    public enum Kind {
        /** Its place was looked at, and it was scanned nowhere. */
        MISSING,
        /** It was scanned at another place than the book has. */
        ELSEWHERE,
        /** The book knows no such wheel. */
        UNKNOWN
    }

    /** What is done about it. */
    public enum Answer {
        /** It stays where it was found, and the book says so. */
        BOOK_FOLLOWS,
        /** It lies where the book has it, now or after all. */
        LAID_BACK,
        /** It is not in the store: the book no longer says where it lies. */
        NOT_HERE,
        /** Nothing. */
        LEFT_SO
    }

    /** What may be done about it. */
    public List<Answer> answers() {
        return switch (kind) {
            case MISSING -> List.of(Answer.LAID_BACK, Answer.NOT_HERE);
            case ELSEWHERE ->
                bookPlace == null
                        ? List.of(Answer.BOOK_FOLLOWS, Answer.LEFT_SO)
                        : List.of(Answer.BOOK_FOLLOWS, Answer.LAID_BACK);
            case UNKNOWN -> List.of(Answer.LEFT_SO);
        };
    }
}
