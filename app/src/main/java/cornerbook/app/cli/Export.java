package cornerbook.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.Book;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.store.BookException;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Progress;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.exchange.table.TableFiles;
import cornerbook.app.exchange.table.TableForm;
import cornerbook.app.log.Faults;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Writes cars of the book as visit files, or all that was measured and done as tables. */
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

    @CommandLine.Option(
            names = "--parquet",
            paramLabel = "${bundle:label-folder}",
            descriptionKey = "option-export-parquet")
    private @Nullable Path parquet;

    @CommandLine.Option(names = "--csv", paramLabel = "${bundle:label-folder}", descriptionKey = "option-export-csv")
    private @Nullable Path csv;

    @CommandLine.Option(names = "--names", descriptionKey = "option-export-names")
    private boolean names;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Export(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var id = vehicleId;
        if (Stream.of(all, id != null, parquet != null, csv != null)
                        .filter(Boolean::booleanValue)
                        .count()
                != 1) {
            throw usage(CliSaid.Plainly.NAME_ONE_OR_ALL);
        }
        if (parquet != null) {
            writeTables(parquet, TableForm.PARQUET);
        } else if (csv != null) {
            writeTables(csv, TableForm.CSV);
        } else {
            writeVisitFiles(id);
        }
    }

    private void writeTables(Path target, TableForm form) {
        if (output != null || force) {
            throw usage(CliSaid.Plainly.TABLES_INTO_THEIR_FOLDER);
        }
        TargetFile.refuseFolder(target);
        try (var book = folder.openExisting()) {
            var progress = Progress.of(book.cars().count());
            var files = TableFiles.makeFolder(book, target, form, names, (done, cars) -> progress.advance());
            progress.end();
            files.forEach(file -> terminal.say(new CliSaid.Wrote(file.toString())));
        } catch (IOException e) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.CannotBeWritten(target.toString()));
        }
    }

    private void writeVisitFiles(@Nullable String id) {
        if (names) {
            throw usage(CliSaid.Plainly.NAMES_OF_TABLES);
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
