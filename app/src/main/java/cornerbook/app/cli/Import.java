package cornerbook.app.cli;

import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Puts the cars of visit files into the book: all of them or none. */
@CommandLine.Command(name = "import", description = "Put the cars of visit files into the book, all or none.")
final class Import implements Runnable {
    private final PrintWriter out;

    @CommandLine.Parameters(paramLabel = "FILE", arity = "1..*", description = "Visit files, one car each.")
    private List<Path> files = List.of();

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(names = "--json", description = "Print the ids of the cars as JSON.")
    private boolean json;

    Import(PrintWriter out) {
        this.out = out;
    }

    private record Answer(List<String> imported, List<String> updatedCustomers) {}

    @Override
    public void run() {
        var records = SourceFile.readAll(files);
        List<Customer> changed;
        try (var book = folder.open()) {
            changed = book.addRecords(records);
        }
        var vehicles =
                records.stream().map(record -> record.history().vehicle()).toList();
        if (json) {
            out.println(Printed.jsonOf(new Answer(
                    vehicles.stream().map(Vehicle::id).toList(),
                    changed.stream().map(Customer::id).toList())));
        } else {
            vehicles.forEach(
                    vehicle -> out.println(Printed.line("Imported %s, %s".formatted(vehicle.name(), vehicle.plate()))));
            changed.forEach(customer -> out.println(Printed.line("Updated customer %s: %s, phone %s, e-mail %s"
                    .formatted(customer.id(), customer.name(), told(customer.phone()), told(customer.email())))));
        }
    }

    private static String told(@Nullable String detail) {
        return detail == null ? "not known" : detail;
    }
}
