package cornerbook.app.request;

/** A request that cannot be answered; the message is one sentence for people. */
public final class PageException extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final int status;

    public PageException(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    public int status() {
        return status;
    }
}
