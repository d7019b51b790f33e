package cornerbook.app.bench;

import cornerbook.core.say.Said;

/** What was written for one question cannot be read or cannot be, or is missing where it is needed. */
public final class AskException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private enum Kind {
        MISSING,
        UNREAD,
        REFUSED
    }

    private final String ask;
    private final transient Said said;
    private final Kind kind;

    private AskException(String ask, Said said, Kind kind) {
        super(said.toString());
        this.ask = ask;
        this.said = said;
        this.kind = kind;
    }

    static AskException missing(Ask ask) {
        return new AskException(ask.name(), new RefusalSaid.Missing(ask.help()), Kind.MISSING);
    }

    /** What was written is not in the form that was asked for. */
    static AskException unread(String ask, Said said) {
        return new AskException(ask, said, Kind.UNREAD);
    }

    /** What was written is understood, and cannot be. */
    static AskException refused(String ask, Said said) {
        return new AskException(ask, said, Kind.REFUSED);
    }

    /** Whether nothing was written where something is needed. */
    public boolean isMissing() {
        return kind == Kind.MISSING;
    }

    /** Whether what was written was understood. */
    public boolean isRefused() {
        return kind == Kind.REFUSED;
    }

    /** Name of the question. */
    public String ask() {
        return ask;
    }

    /** One sentence about what was written, without its beginning: where it stands says what it is about. */
    public Said said() {
        return said;
    }
}
