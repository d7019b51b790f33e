package cornerbook.app.cli;

import cornerbook.app.book.Book;
import cornerbook.app.cli.print.Terminal;
import java.nio.file.Path;
import picocli.CommandLine;

/** Makes a book of a backup. */
@CommandLine.Command(name = "restore", description = "verb-restore")
final class Restore implements Runnable {
    private final Terminal terminal;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", descriptionKey = "param-restore")
    private Path file = Path.of("");

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Restore(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var restored = Book.restore(file, folder.path());
        var counts = restored.counts();
        terminal.say(new CliSaid.Restored(
                folder.path().toString(), counts.cars(), counts.visits(), counts.readings(), counts.photos()));
        if (!restored.sealed()) {
            terminal.say(CliSaid.Plainly.UNSEALED);
        }
    }
}
