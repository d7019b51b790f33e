package cornerbook.app.cli;

import cornerbook.core.say.Said;
import java.util.List;

/** A verb could not do what was asked. */
final class CommandFailure extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** The program has a fault. */
    static final int FAULT = 1;
    /** What was read cannot stand. */
    static final int INPUT_REFUSED = 3;
    /** The book refuses or fails. */
    static final int BOOK = 4;
    /** A file or a port cannot be used. */
    static final int FILE_OR_PORT = 5;

    private final int exitCode;
    private final transient List<Said> sentences;

    CommandFailure(int exitCode, Said sentence) {
        this(exitCode, List.of(sentence));
    }

    CommandFailure(int exitCode, List<? extends Said> sentences) {
        super(sentences.toString());
        this.exitCode = exitCode;
        this.sentences = List.copyOf(sentences);
    }

    int exitCode() {
        return exitCode;
    }

    /** What a person is told, a line each. */
    List<Said> sentences() {
        return sentences;
    }
}
