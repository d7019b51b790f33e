package cornerbook.app.cli;

import cornerbook.app.book.Book;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine;

/** Makes a book of a backup. */
@CommandLine.Command(name = "restore", description = "Put a backup into a folder that has no book yet.")
final class Restore implements Runnable {
    private final PrintWriter out;

    @CommandLine.Parameters(paramLabel = "FILE", description = "Backup to read.")
    private Path file = Path.of("");

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Restore(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var restored = Book.restore(file, folder.path());
        var counts = restored.counts();
        out.println(Printed.line("Restored the book in %s: %,d cars, %,d visits, %,d readings, %,d photos"
                .formatted(folder.path(), counts.cars(), counts.visits(), counts.readings(), counts.photos())));
        if (!restored.sealed()) {
            out.println(
                    "The backup has no seal, as older programs wrote none: it is sound, but a changed byte may have gone unnoticed.");
        }
    }
}
