package cornerbook.app.cli;

import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.VisitFile;
import picocli.CommandLine;

/** Prints the schema of the visit file, with every measure that there is. */
@CommandLine.Command(name = "schema", description = "verb-schema")
final class Schema implements Runnable {
    private final Terminal terminal;

    Schema(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        terminal.out().println(VisitFile.schema());
    }
}
