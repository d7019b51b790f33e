package cornerbook.app.bay;

import cornerbook.core.say.Said;

/** An entry that cannot stand, with what a person is told. */
final class RefusedEntry extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final String pointer;
    private final transient Said said;

    /**
     * A refusal.
     *
     * @param pointer JSON pointer (RFC 6901) to what cannot stand
     */
    RefusedEntry(String pointer, Said said) {
        super(said.toString());
        this.pointer = pointer;
        this.said = said;
    }

    String pointer() {
        return pointer;
    }

    Said said() {
        return said;
    }
}
