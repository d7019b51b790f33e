package cornerbook.app.cli;

import cornerbook.app.exchange.ClimateFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Keeps the climate of the shop's place in the book, or prints it. */
@CommandLine.Command(
        name = "climate",
        description = "Keep the climate of the shop's place in the book, from a CSV file, or print it as one.")
final class PlaceClimate implements Runnable {
    private final PrintWriter out;

    @CommandLine.Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "Climate file; the climate that is in the book is printed if not given.")
    private @Nullable Path file;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    PlaceClimate(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var named = file;
        if (named == null) {
            try (var book = folder.openExisting()) {
                var climate = book.climate()
                        .find()
                        .orElseThrow(() -> new CommandFailure(
                                CommandFailure.BOOK, "The book has no climate, expected one to be kept before."));
                out.print(ClimateFile.write(climate));
            }
            return;
        }
        var climate = ClimateOption.read(named);
        try (var book = folder.open()) {
            book.climate().put(climate);
        }
        out.println(Printed.line("Kept the climate of " + climate.place()));
    }
}
