package cornerbook.app.cli;

import cornerbook.words.Reader;
import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.Book;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.store.BookException;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.log.Faults;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Writes cars of the book as visit files. */
@CommandLine.Command(name = "export", description = "Write one car of the book, or all, as visit files.")
final class Export implements Runnable {
    private final PrintWriter out;

    @CommandLine.Spec
    private CommandLine.Model.@Nullable CommandSpec spec;

    @CommandLine.Parameters(paramLabel = "VEHICLE", arity = "0..1", description = "Id of the car.")
    private @Nullable String vehicleId;

    @CommandLine.Option(names = "--all", description = "Write all cars, one file each.")
    private boolean all;

    @CommandLine.Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            description = "Folder to write to; one car is printed if not given.")
    private @Nullable Path output;

    @CommandLine.Option(names = "--force", description = "Overwrite files that are there already.")
    private boolean force;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Export(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var id = vehicleId;
        if (all == (id != null)) {
            throw usage("Name either one VEHICLE or --all.");
        }
        var target = output;
        if (all && target == null) {
            throw usage("Name a folder for all cars with -o FOLDER.");
        }
        try (var book = folder.openExisting()) {
            var ids = id != null
                    ? List.of(id)
                    : book.listVehicles().stream().map(VehicleSummary::id).toList();
            if (target == null) {
                ids.forEach(each -> out.println(Printed.json(VisitFile.write(record(book, each)))));
            } else {
                write(book, ids, target);
            }
        }
    }

    private void write(Book book, List<String> ids, Path target) {
        var contents = new LinkedHashMap<Path, byte[]>();
        var left = new ArrayList<String>();
        for (var id : ids) {
            var file = target.resolve(id.replaceAll("[^A-Za-z0-9._-]", "_") + ".json");
            TargetFile.refuse(file, force);
            var written = written(book, id, left);
            if (written.isPresent() && contents.put(file, written.get()) != null) {
                throw new CommandFailure(
                        CommandFailure.FILE_OR_PORT,
                        "Two cars would be written to %s, expected ids that differ in letters and digits; export them one by one."
                                .formatted(file));
            }
        }
        for (Map.Entry<Path, byte[]> entry : contents.entrySet()) {
            TargetFile.write(entry.getKey(), entry.getValue(), force);
            out.println(Printed.line("Wrote " + entry.getKey()));
        }
        if (!left.isEmpty()) {
            throw CommandFailure.of(CommandFailure.BOOK, left);
        }
    }

    /** A car that cannot be taken out keeps no other back; it is told at the end. */
    private static Optional<byte[]> written(Book book, String id, List<String> left) {
        try {
            return Optional.of(VisitFile.write(record(book, id)).getBytes(UTF_8));
        } catch (BookException refused) {
            left.add(Reader.DEFAULT.say(refused.said()));
        } catch (CommandFailure gone) {
            throw gone;
        } catch (RuntimeException fault) {
            left.add("Car %s could not be written: the program has a fault with it, %s in the log."
                    .formatted(id, Faults.note("writing car " + id, fault)));
        }
        return Optional.empty();
    }

    private static CarRecord record(Book book, String id) {
        return book.findRecord(id)
                .orElseThrow(() -> new CommandFailure(
                        CommandFailure.BOOK, "There is no car %s in the book, expected one of its ids.".formatted(id)));
    }

    private CommandLine.ParameterException usage(String sentence) {
        var command = spec;
        return new CommandLine.ParameterException(
                command == null ? new CommandLine(this) : command.commandLine(), sentence);
    }
}
