package cornerbook.app.cli;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import picocli.CommandLine;

/** Serves the book of the invented shop; makes it when it is empty. */
@CommandLine.Command(name = "demo", description = "Serve the book of an invented shop; made when it is not there.")
final class Demo implements Runnable {
    private static final int STILL_OPEN_DAYS = 6;

    private final PrintWriter out;

    @CommandLine.Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "Folder of the book (default: ${DEFAULT-VALUE}).")
    private Path folder = Path.of("data", "demo");

    @CommandLine.Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Port to listen on (default: ${DEFAULT-VALUE}); 0 takes a free one.")
    private int port = 7411;

    Demo(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        try (var book = Book.open(folder)) {
            if (book.listVehicles().isEmpty()) {
                fill(book, LocalDate.now(ZoneId.systemDefault()));
            }
            PageServer.serve(
                    book,
                    port,
                    DemoShop.NAME,
                    "\nAll data are invented: %s. Stop with Ctrl+C.".formatted(DemoShop.NAME),
                    out);
        }
    }

    /** The cars, and the re-torques of all but the latest of them as recorded. */
    private static void fill(Book book, LocalDate today) {
        book.addAll(DemoShop.histories(today));
        book.listOpenRetorques().stream()
                .filter(retorque -> retorque.dueDate().isBefore(today.minusDays(STILL_OPEN_DAYS)))
                .forEach(retorque -> book.recordRetorque(
                        retorque.visitId(), retorque.dueDate(), retorque.dueOdometerKm(), retorque.torqueNm()));
    }
}
