package cornerbook.app.cli;

import cornerbook.app.sheet.Letterhead;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine;

/** Serves the pages of the book on this machine. */
@CommandLine.Command(
        name = "serve",
        description = "Serve the pages of the book, on this machine, and to paired tablets with --address.")
final class Serve implements Runnable {
    private final PrintWriter out;

    @CommandLine.Mixin
    private ServeOptions options = new ServeOptions(Path.of("data", "book"));

    @CommandLine.Option(
            names = "--shop",
            paramLabel = "NAME",
            description = "Name of the shop, as it is printed on top of each handover sheet.")
    private String shopName = "";

    Serve(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        try (var book = options.open()) {
            PageServer.serve(book, options.door(), Letterhead.of(shopName), "", out);
        }
    }
}
