package cornerbook.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.logging.Logger;
import picocli.CommandLine;

/** Writes a copy of the whole book. */
@CommandLine.Command(name = "backup", description = "Write a copy of the whole book to a file that is not there yet.")
final class Backup implements Runnable {
    private static final Logger LOG = Logger.getLogger(Backup.class.getName());

    private final PrintWriter out;

    @CommandLine.Parameters(paramLabel = "FILE", description = "File to write.")
    private Path file = Path.of("");

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Backup(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        try (var book = folder.openExisting()) {
            book.backup(file);
            LOG.info("A backup was written");
        }
        out.println(Printed.line("Wrote " + file));
    }
}
