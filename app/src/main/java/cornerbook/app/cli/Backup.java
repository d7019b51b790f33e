package cornerbook.app.cli;

import cornerbook.app.cli.print.Terminal;
import java.nio.file.Path;
import java.util.logging.Logger;
import picocli.CommandLine;

/** Writes a copy of the whole book. */
@CommandLine.Command(name = "backup", description = "verb-backup")
final class Backup implements Runnable {
    private static final Logger LOG = Logger.getLogger(Backup.class.getName());

    private final Terminal terminal;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", descriptionKey = "param-backup")
    private Path file = Path.of("");

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Backup(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        try (var book = folder.openExisting()) {
            book.backup(file);
            LOG.info("A backup was written");
        }
        terminal.say(new CliSaid.Wrote(file.toString()));
    }
}
