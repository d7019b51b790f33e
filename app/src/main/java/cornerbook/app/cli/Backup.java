package cornerbook.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine;

/** Writes a copy of the whole book. */
@CommandLine.Command(name = "backup", description = "Write a copy of the whole book to a file that is not there yet.")
final class Backup implements Runnable {
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
        }
        out.println(Printed.line("Wrote " + file));
    }
}
