package cornerbook.app.cli;

import cornerbook.app.book.Book;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.car.CarHistory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
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
        // A new book is made meanwhile.
        Supplier<List<CarHistory>> invented = options.isThere()
                ? () -> DemoShop.histories(today)
                : CompletableFuture.supplyAsync(() -> DemoShop.histories(today))::join;
        try (var book = options.open()) {
            var cars = book.cars().list();
            refuseReal(cars, DemoShop.carIds(today));
            if (cars.isEmpty()) {
                fill(book, invented.get(), today);
            }
            PageServer.serve(
                    book,
                    options.door(),
                    new Letterhead(DemoShop.NAME, DemoShop.ADDRESS, DemoShop.TELEPHONE, true),
                    terminal,
                    new CliSaid.AllInvented(DemoShop.NAME));
        }
    }

    /** A book with a car that was not invented must not be served as if it were. */
    private void refuseReal(List<VehicleSummary> cars, Set<String> invented) {
        cars.stream().filter(car -> !invented.contains(car.id())).findFirst().ifPresent(car -> {
            throw new CommandFailure(CommandFailure.BOOK, new CliSaid.NotInvented(options.place(), car.id()));
        });
    }

    /** The cars, the tools, the climate of the place, and the re-torques of all but the latest of them as recorded. */
    private static void fill(Book book, List<CarHistory> invented, LocalDate today) {
        book.records().addCars(invented);
        book.climate().put(DemoShop.climate());
        DemoShop.tools(today).forEach(book.tools()::put);
        book.retorques().listOpen().stream()
                .filter(retorque -> retorque.dueDate().isBefore(today.minusDays(STILL_OPEN_DAYS)))
                .forEach(retorque -> book.retorques()
                        .record(
                                retorque.visitId(),
                                retorque.dueDate(),
                                retorque.dueOdometerKm(),
                                Objects.requireNonNull(retorque.torqueNm())));
    }
}
