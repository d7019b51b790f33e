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

    Serve(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        try (var book = folder.open()) {
            PageServer.serve(book, port, "", out);
        }
    }
}
