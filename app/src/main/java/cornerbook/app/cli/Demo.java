package cornerbook.app.cli;

import cornerbook.app.sheet.Letterhead;
import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine;

/** Serves the book of the invented shop; makes it when it is empty. */
@CommandLine.Command(name = "demo", description = "Serve the book of an invented shop; made when it is not there.")
final class Demo implements Runnable {
    private static final int STILL_OPEN_DAYS = 6;

    private final PrintWriter out;

    @CommandLine.Mixin
    private ServeOptions options = new ServeOptions(Path.of("data", "demo"));

    Demo(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var today = LocalDate.now(ZoneId.systemDefault());
        var inventing = CompletableFuture.supplyAsync(() -> DemoShop.histories(today));
        try (var book = options.open()) {
            var invented = inventing.join();
            refuseReal(book, invented);
            if (book.listVehicles().isEmpty()) {
                fill(book, invented, today);
            }
            PageServer.serve(
                    book,
                    options.door(),
                    Letterhead.ofInvented(DemoShop.NAME),
                    "\nAll data are invented: %s. Stop with Ctrl+C.".formatted(DemoShop.NAME),
                    out);
        }
    }

    /** A book with a car that was not invented must not be served as if it were. */
    private void refuseReal(Book book, List<CarHistory> invented) {
        var ids = invented.stream().map(history -> history.vehicle().id()).toList();
        book.listVehicles().stream()
                .filter(vehicle -> !ids.contains(vehicle.id()))
                .findFirst()
                .ifPresent(vehicle -> {
                    throw new CommandFailure(
                            CommandFailure.BOOK,
                            "The book in %s has the car %s, which is not of the invented shop, expected a folder without a book; see serve."
                                    .formatted(options.place(), vehicle.id()));
                });
    }

    /** The cars, the tools, the climate of the place, and the re-torques of all but the latest of them as recorded. */
    private static void fill(Book book, List<CarHistory> invented, LocalDate today) {
        book.addAll(invented);
        book.climate().put(DemoShop.climate());
        DemoShop.tools(today).forEach(book.tools()::put);
        book.listOpenRetorques().stream()
                .filter(retorque -> retorque.dueDate().isBefore(today.minusDays(STILL_OPEN_DAYS)))
                .forEach(retorque -> book.recordRetorque(
                        retorque.visitId(), retorque.dueDate(), retorque.dueOdometerKm(), retorque.torqueNm()));
    }
}
