package cornerbook.app.cli;

import cornerbook.words.Reader;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads visit files for the verbs. */
final class SourceFile {
    private SourceFile() {}

    /** Reads all of them; refuses all when one cannot stand. */
    static List<CarRecord> readAll(List<Path> files) {
        var today = LocalDate.now(ZoneId.systemDefault());
        var records = new ArrayList<CarRecord>();
        var sentences = new ArrayList<String>();
        for (var file : files) {
            if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
                throw new CommandFailure(
                        CommandFailure.FILE_OR_PORT, "There is no file %s that can be read.".formatted(file));
            }
            switch (VisitFile.read(file, today)) {
                case VisitFile.Read read -> records.add(read.record());
                case VisitFile.Refused refused ->
                    refused.problems()
                            .forEach(problem -> sentences.add("%s: %s%s"
                                    .formatted(
                                            file,
                                            problem.where().isEmpty() ? "" : problem.where() + ": ",
                                            Reader.DEFAULT.say(problem.message()))));
            }
        }
        if (!sentences.isEmpty()) {
            throw CommandFailure.of(CommandFailure.INPUT_REFUSED, sentences);
        }
        return records;
    }

    static CarRecord read(Path file) {
        return readAll(List.of(file)).getFirst();
    }

    /** The visit of that id, the last one when there is no id. */
    static Visit visit(CarHistory history, @Nullable String id, Path file) {
        if (history.visits().isEmpty()) {
            throw new CommandFailure(
                    CommandFailure.INPUT_REFUSED, "%s has no visit, expected one at least.".formatted(file));
        }
        if (id == null) {
            return history.visits().getLast();
        }
        return history.visits().stream()
                .filter(visit -> visit.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new CommandFailure(
                        CommandFailure.INPUT_REFUSED,
                        "%s has no visit %s, expected one of %s."
                                .formatted(
                                        file,
                                        id,
                                        String.join(
                                                ", ",
                                                history.visits().stream()
                                                        .map(Visit::id)
                                                        .toList()))));
    }
}
