package cornerbook.app.book.store;

/** What became of an entry that arrived from a tablet. */
public enum Arrival {
    STORED,
    /** It is in the book already, by its id. */
    ALREADY,
    /** Another reading stands there: both are kept until a person says which one counts. */
    CONFLICT;

    /** Of an entry that was stored, or was there. */
    public static Arrival of(boolean stored) {
        return stored ? STORED : ALREADY;
    }
}
