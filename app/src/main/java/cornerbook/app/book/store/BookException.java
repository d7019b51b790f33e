package cornerbook.app.book.store;

import org.jspecify.annotations.Nullable;

/** The book refuses or fails. The message is one sentence for people; nothing was changed. */
public final class BookException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private enum Kind {
        REFUSAL,
        FAILURE,
        OF_BACKUP
    }

    private final Kind kind;

    /** The book refuses what it was given. */
    public BookException(String message) {
        this(message, null, Kind.REFUSAL);
    }

    /** The book could not be used. */
    public BookException(String message, Throwable cause) {
        this(message, cause, Kind.FAILURE);
    }

    private BookException(String message, @Nullable Throwable cause, Kind kind) {
        super(message, cause);
        this.kind = kind;
    }

    static BookException failure(String message) {
        return new BookException(message, null, Kind.FAILURE);
    }

    static BookException refusal(String message, Throwable cause) {
        return new BookException(message, cause, Kind.REFUSAL);
    }

    public static BookException ofBackup(String message, @Nullable Throwable cause) {
        return new BookException(message, cause, Kind.OF_BACKUP);
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
