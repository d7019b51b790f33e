package cornerbook.app.cli;

import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import java.nio.file.Path;
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

    Import(Terminal terminal) {
        this.terminal = terminal;
    }

    private record Answer(List<String> imported, List<String> updatedCustomers) {}

    @Override
    public void run() {
        var records = SourceFile.readAll(files);
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
}
