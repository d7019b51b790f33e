package cornerbook.app.cli;

import java.util.List;

/** A verb could not do what was asked. The message has one sentence a line. */
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

    CommandFailure(int exitCode, String sentence) {
        super(sentence);
        this.exitCode = exitCode;
    }

    static CommandFailure of(int exitCode, List<String> sentences) {
        return new CommandFailure(exitCode, String.join("\n", sentences));
    }

    int exitCode() {
        return exitCode;
    }
}
