package cornerbook.app.cli;

import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.KindFile;
import cornerbook.core.say.Said;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Keeps data sheets of kinds of cars: all files or none; writes one out; lists them. */
@CommandLine.Command(name = "kinds", description = "verb-kinds")
final class Kinds implements Runnable {
    private final Terminal terminal;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", arity = "0..*", descriptionKey = "param-kinds")
    private List<Path> files = List.of();

    @CommandLine.Option(names = "--export", paramLabel = "${bundle:label-name}", descriptionKey = "option-kinds-export")
    private @Nullable String export;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Kinds(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var kinds = readAll();
        try (var book = kinds.isEmpty() ? folder.openExisting() : folder.open()) {
            var sheets = new LinkedHashMap<String, String>();
            kinds.forEach(kind -> sheets.put(kind.name(), KindFile.write(kind)));
            book.kindSheets().put(sheets);
            var name = export;
            if (name != null) {
                terminal.out()
                        .print(book.kindSheets()
                                .find(name)
                                .orElseThrow(() -> new CommandFailure(CommandFailure.BOOK, new CliSaid.NoKind(name))));
            } else if (kinds.isEmpty()) {
                KindFile.readAll(book.kindSheets().list(), today())
                        .forEach(kind -> terminal.say(new CliSaid.KindListed(kind.name(), kind.vin())));
            }
        }
        kinds.forEach(kind -> terminal.say(new CliSaid.KindKept(kind.name())));
    }

    private List<KindFile.Kind> readAll() {
        var kinds = new ArrayList<KindFile.Kind>();
        var sentences = new ArrayList<Said>();
        for (var file : files) {
            if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
                throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.NoFile(file.toString()));
            }
            switch (KindFile.read(file, today())) {
                case KindFile.Read read -> kinds.add(read.kind());
                case KindFile.Faulty faulty ->
                    faulty.problems()
                            .forEach(problem -> sentences.add(new CliSaid.OfFile(
                                    file.toString(),
                                    problem.where().isEmpty() ? null : problem.where(),
                                    problem.message())));
            }
        }
        if (!sentences.isEmpty()) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, sentences);
        }
        return kinds;
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }
}
