package cornerbook.app.cli;

import cornerbook.app.book.record.CarRecord;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.season.LikelyOdometer;
import cornerbook.core.season.judge.OdometerRange;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** Puts the cars of visit files into the book: all of them or none. */
@CommandLine.Command(name = "import", description = "verb-import")
final class Import implements Runnable {
    private final Terminal terminal;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", arity = "1..*", descriptionKey = "param-import")
    private List<Path> files = List.of();

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(names = "--json", descriptionKey = "option-import-json")
    private boolean json;

    @CommandLine.Option(names = "--odometers-are-so", descriptionKey = "option-odometers-are-so")
    private boolean odometersAreSo;

    Import(Terminal terminal) {
        this.terminal = terminal;
    }

    private record Answer(List<String> imported, List<String> updatedCustomers) {}

    private record Imported(String id, String name, String plate) {
        static Imported of(Vehicle vehicle) {
            return new Imported(vehicle.id(), vehicle.name(), vehicle.plate());
        }
    }

    @Override
    public void run() {
        var vehicles = new ArrayList<Imported>();
        var records = new SourceFiles(
                files,
                odometersAreSo ? (file, record) -> List.of() : Import::askAboutOdometers,
                record -> vehicles.add(Imported.of(record.history().vehicle())));
        var changed = folder.isThere()
                ? addTo(records)
                : folder.make(book -> book.records().add(records));
        if (json) {
            terminal.out()
                    .println(Printed.jsonOf(new Answer(
                            vehicles.stream().map(Imported::id).toList(),
                            changed.stream().map(Customer::id).toList())));
        } else {
            vehicles.forEach(vehicle -> terminal.say(new CliSaid.Imported(vehicle.name(), vehicle.plate())));
            changed.forEach(customer -> terminal.say(
                    new CliSaid.UpdatedCustomer(customer.id(), customer.name(), customer.phone(), customer.email())));
        }
    }

    private List<Customer> addTo(SourceFiles records) {
        try (var book = folder.open()) {
            return book.records().add(records);
        }
    }

    /** An odometer that its car can hardly have, with what was likely meant. */
    private static List<Said> askAboutOdometers(Path file, CarRecord record) {
        var asked = new ArrayList<Said>();
        var history = record.history();
        for (int v = 0; v < history.visits().size(); v++) {
            double km = history.visits().get(v).odometerKm();
            var place = "/visits/%s/odometer".formatted(v);
            OdometerRange.of(history, history.visits().get(v))
                    .filter(expected -> !expected.contains(km))
                    .map(expected -> new CliSaid.OfFile(file.toString(), place, asked(expected, km)))
                    .ifPresent(asked::add);
        }
        return asked;
    }

    private static Said asked(OdometerRange expected, double km) {
        var likely = LikelyOdometer.of(km, expected.lowestKm(), expected.highestKm()).stream()
                .map(each -> new CliSaid.LikelyOdometer(Amount.of(each.value(), "km"), each.slip()))
                .toList();
        return new CliSaid.OdometerAsked(
                Amount.of(km, "km"), expected.question(), likely.isEmpty() ? null : Listed.or(likely));
    }
}
