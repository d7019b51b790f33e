package cornerbook.app.bay;

/** An entry that cannot stand; the message is one sentence for people. */
final class RefusedEntry extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final String pointer;

    /**
     * A refusal.
     *
     * @param pointer JSON pointer (RFC 6901) to what cannot stand
     */
    RefusedEntry(String pointer, String sentence) {
        super(sentence);
        this.pointer = pointer;
    }

    String pointer() {
        return pointer;
    }
}
