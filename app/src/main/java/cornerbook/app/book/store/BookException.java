package cornerbook.app.book.store;

import cornerbook.core.say.Said;
import cornerbook.core.say.Saying;
import org.jspecify.annotations.Nullable;

/** The book refuses or fails, with the one sentence that a person is told; nothing was changed. */
public final class BookException extends RuntimeException implements Saying {
    private static final long serialVersionUID = 1;

    private enum Kind {
        REFUSAL,
        FAILURE,
        OF_BACKUP
    }

    private final transient Said said;
    private final Kind kind;

    /** The book refuses what it was given. */
    public BookException(Said said) {
        this(said, null, Kind.REFUSAL);
    }

    /** The book could not be used. */
    public BookException(Said said, Throwable cause) {
        this(said, cause, Kind.FAILURE);
    }

    private BookException(Said said, @Nullable Throwable cause, Kind kind) {
        super(said.toString(), cause);
        this.said = said;
        this.kind = kind;
    }

    static BookException failure(Said said) {
        return new BookException(said, null, Kind.FAILURE);
    }

    static BookException refusal(Said said, Throwable cause) {
        return new BookException(said, cause, Kind.REFUSAL);
    }

    public static BookException ofBackup(Said said, @Nullable Throwable cause) {
        return new BookException(said, cause, Kind.OF_BACKUP);
    }

    @Override
    public Said said() {
        return said;
    }

    /** Whether the book could not be used, rather than refused what it was given: the same may be tried again. */
    public boolean isFailure() {
        return kind == Kind.FAILURE;
    }

    /** Whether not the book is at fault but the file that it was to be copied to or restored from. */
    public boolean isOfBackup() {
        return kind == Kind.OF_BACKUP;
    }
}
