package cornerbook.app.bench;

import java.util.Locale;

/** What was written for one question cannot be read, or is missing where it is needed. The message is one sentence. */
public final class AskException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private final String ask;
    private final boolean missing;

    AskException(String ask, String sentence) {
        this(ask, sentence, false);
    }

    private AskException(String ask, String sentence, boolean missing) {
        super(sentence);
        this.ask = ask;
        this.missing = missing;
    }

    static AskException missing(Ask ask) {
        var help = ask.help();
        return new AskException(
                ask.name(),
                "is missing, expected " + help.substring(0, 1).toLowerCase(Locale.ROOT) + help.substring(1),
                true);
    }

    /** Whether nothing was written where something is needed. */
    public boolean isMissing() {
        return missing;
    }

    /** Name of the question. */
    public String ask() {
        return ask;
    }
}
