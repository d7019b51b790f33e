package cornerbook.app.book;

/** The book refuses or fails. The message is one sentence for people; nothing was changed. */
public final class BookException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public BookException(String message) {
        super(message);
    }

    public BookException(String message, Throwable cause) {
        super(message, cause);
    }
}
