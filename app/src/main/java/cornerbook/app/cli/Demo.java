package cornerbook.app.cli;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.car.CarHistory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine;

/** Serves the book of the invented shop; makes it when it is empty. */
@CommandLine.Command(name = "demo", description = "verb-demo")
final class Demo implements Runnable {
    private static final int STILL_OPEN_DAYS = 6;

    private final Terminal terminal;

    @CommandLine.Mixin
    private ServeOptions options = new ServeOptions(Path.of("data", "demo"));

    Demo(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var today = LocalDate.now(ZoneId.systemDefault());
        var inventing = CompletableFuture.supplyAsync(() -> DemoShop.histories(today));
        try (var book = options.open()) {
            var invented = inventing.join();
            refuseReal(book, invented);
            if (book.cars().list().isEmpty()) {
                fill(book, invented, today);
            }
            PageServer.serve(
                    book,
                    options.door(),
                    Letterhead.ofInvented(DemoShop.NAME),
                    terminal,
                    new CliSaid.AllInvented(DemoShop.NAME));
        }
    }

    /** A book with a car that was not invented must not be served as if it were. */
    private void refuseReal(Book book, List<CarHistory> invented) {
        var ids = invented.stream().map(history -> history.vehicle().id()).toList();
        book.cars().list().stream()
                .filter(vehicle -> !ids.contains(vehicle.id()))
                .findFirst()
                .ifPresent(vehicle -> {
                    throw new CommandFailure(
                            CommandFailure.BOOK, new CliSaid.NotInvented(options.place(), vehicle.id()));
                });
    }

    /** The cars, the tools, the climate of the place, and the re-torques of all but the latest of them as recorded. */
    private static void fill(Book book, List<CarHistory> invented, LocalDate today) {
        book.records().addCars(invented);
        book.climate().put(DemoShop.climate());
        DemoShop.tools(today).forEach(book.tools()::put);
        book.retorques().listOpen().stream()
                .filter(retorque -> retorque.dueDate().isBefore(today.minusDays(STILL_OPEN_DAYS)))
                .forEach(retorque -> book.retorques().record(
                        retorque.visitId(), retorque.dueDate(), retorque.dueOdometerKm(), retorque.torqueNm()));
    }
}
