package cornerbook.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine;

/** Serves the pages of the book on this machine. */
@CommandLine.Command(name = "serve", description = "Serve the pages of the book, on this machine only.")
final class Serve implements Runnable {
    private final PrintWriter out;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port to listen on (default: ${DEFAULT-VALUE}); 0 takes a free one.")
    private int port = 7411;

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
        try (var book = folder.open()) {
            PageServer.serve(book, port, shopName, "", out);
        }
    }
}
