package cornerbook.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.Book;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.store.BookException;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.log.Faults;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Writes cars of the book as visit files. */
@CommandLine.Command(name = "export", description = "verb-export")
final class Export implements Runnable {
    private final Terminal terminal;

    @CommandLine.Parameters(paramLabel = "${bundle:label-vehicle}", arity = "0..1", descriptionKey = "param-export")
    private @Nullable String vehicleId;

    @CommandLine.Option(names = "--all", descriptionKey = "option-export-all")
    private boolean all;

    @CommandLine.Option(
            names = {"-o", "--output"},
            paramLabel = "${bundle:label-folder}",
            descriptionKey = "option-export-output")
    private @Nullable Path output;

    @CommandLine.Option(names = "--force", descriptionKey = "option-export-force")
    private boolean force;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Export(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var id = vehicleId;
        if (all == (id != null)) {
            throw usage(CliSaid.Plainly.NAME_ONE_OR_ALL);
        }
        var target = output;
        if (all && target == null) {
            throw usage(CliSaid.Plainly.NAME_FOLDER_FOR_ALL);
        }
        try (var book = folder.openExisting()) {
            var ids = id != null
                    ? List.of(id)
                    : book.cars().list().stream().map(VehicleSummary::id).toList();
            if (target == null) {
                ids.forEach(each -> terminal.out().println(Printed.json(VisitFile.write(record(book, each)))));
            } else {
                write(book, ids, target);
            }
        }
    }

    private void write(Book book, List<String> ids, Path target) {
        var contents = new LinkedHashMap<Path, byte[]>();
        var left = new ArrayList<Said>();
        for (var id : ids) {
            var file = target.resolve(id.replaceAll("[^A-Za-z0-9._-]", "_") + ".json");
            TargetFile.refuse(file, force);
            var written = written(book, id, left);
            if (written.isPresent() && contents.put(file, written.get()) != null) {
                throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.CarsOverwrite(file.toString()));
            }
        }
        for (Map.Entry<Path, byte[]> entry : contents.entrySet()) {
            TargetFile.write(entry.getKey(), entry.getValue(), force);
            terminal.say(new CliSaid.Wrote(entry.getKey().toString()));
        }
        if (!left.isEmpty()) {
            throw new CommandFailure(CommandFailure.BOOK, left);
        }
    }

    /** A car that cannot be taken out keeps no other back; it is told at the end. */
    private static Optional<byte[]> written(Book book, String id, List<Said> left) {
        try {
            return Optional.of(VisitFile.write(record(book, id)).getBytes(UTF_8));
        } catch (BookException refused) {
            left.add(refused.said());
        } catch (CommandFailure gone) {
            throw gone;
        } catch (RuntimeException fault) {
            left.add(new CliSaid.CarNotWritten(id, Faults.note("writing car " + id, fault)));
        }
        return Optional.empty();
    }

    private static CarRecord record(Book book, String id) {
        return book.records()
                .find(id)
                .orElseThrow(() -> new CommandFailure(CommandFailure.BOOK, new CliSaid.NoCar(id)));
    }

    private static CommandFailure usage(Said sentence) {
        return new CommandFailure(CommandLine.ExitCode.USAGE, Listed.sentences(sentence, CliSaid.Plainly.SEE_HELP));
    }
}
