package cornerbook.app.book;

import org.jspecify.annotations.Nullable;

/** The book refuses or fails. The message is one sentence for people; nothing was changed. */
public final class BookException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final boolean ofBackup;

    public BookException(String message) {
        this(message, null, false);
    }

    public BookException(String message, Throwable cause) {
        this(message, cause, false);
    }

    private BookException(String message, @Nullable Throwable cause, boolean ofBackup) {
        super(message, cause);
        this.ofBackup = ofBackup;
    }

    static BookException ofBackup(String message, @Nullable Throwable cause) {
        return new BookException(message, cause, true);
    }

    /** Whether the book could not be used, rather than refused what it was given: the same may be tried again. */
    public boolean isFailure() {
        return getCause() != null && !BookFailure.isOfARule(getCause());
    }

    /** Whether not the book is at fault but the file that it was to be copied to or restored from. */
    public boolean isOfBackup() {
        return ofBackup;
    }
}
