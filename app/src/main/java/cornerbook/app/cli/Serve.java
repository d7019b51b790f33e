package cornerbook.app.cli;

import cornerbook.app.cli.arguments.LetterheadOptions;
import cornerbook.app.cli.print.Terminal;
import java.nio.file.Path;
import picocli.CommandLine;

/** Serves the pages of the book on this machine. */
@CommandLine.Command(name = "serve", description = "verb-serve")
final class Serve implements Runnable {
    private final Terminal terminal;

    @CommandLine.Mixin
    private ServeOptions options = new ServeOptions(Path.of("data", "book"));

    @CommandLine.Mixin
    private LetterheadOptions shop = new LetterheadOptions();

    Serve(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        try (var book = options.open()) {
            PageServer.serve(book, options.door(), shop.letterhead(), terminal);
        }
    }
}
