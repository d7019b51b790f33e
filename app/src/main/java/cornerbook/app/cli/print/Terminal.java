package cornerbook.app.cli.print;

import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.io.PrintWriter;

/** Where a verb prints, and in whose words. */
public record Terminal(Reader reader, PrintWriter out) {
    /** For the same person with other units. */
    public Terminal in(UnitSystem units) {
        return new Terminal(reader.in(units), out);
    }

    /** Prints one line. */
    public void say(Said said) {
        out.println(Printed.line(reader.say(said)));
    }

    public Labels labels() {
        return reader.labels("app/cli");
    }
}
