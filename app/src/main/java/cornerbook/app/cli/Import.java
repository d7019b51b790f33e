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

    @Override
    public void run() {
        var records = SourceFile.readAll(files);
        if (!odometersAreSo) {
            askAboutOdometers(records);
        }
        List<Customer> changed;
        try (var book = folder.open()) {
            changed = book.records().add(records);
        }
        var vehicles =
                records.stream().map(record -> record.history().vehicle()).toList();
        if (json) {
            terminal.out()
                    .println(Printed.jsonOf(new Answer(
                            vehicles.stream().map(Vehicle::id).toList(),
                            changed.stream().map(Customer::id).toList())));
        } else {
            vehicles.forEach(vehicle -> terminal.say(new CliSaid.Imported(vehicle.name(), vehicle.plate())));
            changed.forEach(customer -> terminal.say(
                    new CliSaid.UpdatedCustomer(customer.id(), customer.name(), customer.phone(), customer.email())));
        }
    }

    /** Refuses all when an odometer is one that its car can hardly have, and says what was likely meant. */
    private void askAboutOdometers(List<CarRecord> records) {
        var asked = new ArrayList<Said>();
        for (int f = 0; f < records.size(); f++) {
            var history = records.get(f).history();
            for (int v = 0; v < history.visits().size(); v++) {
                double km = history.visits().get(v).odometerKm();
                var file = files.get(f).toString();
                var place = "/visits/%s/odometer".formatted(v);
                OdometerRange.of(history, history.visits().get(v))
                        .filter(expected -> !expected.contains(km))
                        .map(expected -> new CliSaid.OfFile(file, place, asked(expected, km)))
                        .ifPresent(asked::add);
            }
        }
        if (!asked.isEmpty()) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, asked);
        }
    }

    private static Said asked(OdometerRange expected, double km) {
        var likely = LikelyOdometer.of(km, expected.lowestKm(), expected.highestKm()).stream()
                .map(each -> new CliSaid.LikelyOdometer(Amount.of(each.value(), "km"), each.slip()))
                .toList();
        return new CliSaid.OdometerAsked(
                Amount.of(km, "km"), expected.question(), likely.isEmpty() ? null : Listed.or(likely));
    }
}
