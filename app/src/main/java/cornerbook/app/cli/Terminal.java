package cornerbook.app.cli;

import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.io.PrintWriter;

/** Where a verb prints, and in whose words. */
record Terminal(Reader reader, PrintWriter out) {
    /** For the same person with other units. */
    Terminal in(UnitSystem units) {
        return new Terminal(reader.in(units), out);
    }

    /** Prints one line. */
    void say(Said said) {
        out.println(Printed.line(reader.say(said)));
    }

    Labels labels() {
        return reader.labels("app/cli");
    }
}
