package cornerbook.app.cli;

import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.record.LeavingCheck;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.release.ReleaseRule;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
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
        var sentences = new ArrayList<Said>();
        for (var file : files) {
            if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
                throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.NoFile(file.toString()));
            }
            switch (VisitFile.read(file, today)) {
                case VisitFile.Read read -> records.add(read.record());
                case VisitFile.Refused refused ->
                    refused.problems()
                            .forEach(problem -> sentences.add(new CliSaid.OfFile(
                                    file.toString(),
                                    problem.where().isEmpty() ? null : problem.where(),
                                    problem.message())));
            }
        }
        if (!sentences.isEmpty()) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, sentences);
        }
        return records;
    }

    static CarRecord read(Path file) {
        return readAll(List.of(file)).getFirst();
    }

    /** With what keeps the car from leaving, as far as a file says: what a shop asks, and which re-torque it recorded, is not in it. */
    static Assessment withOpen(Assessment assessment, VisitNotes notes) {
        var open =
                new LeavingCheck(assessment.visit(), notes).open(ReleaseRule.all(false, false), assessment.findings());
        return assessment.withOpen(open);
    }

    /** The visit of that id, the last one when there is no id. */
    static Visit visit(CarHistory history, @Nullable String id, Path file) {
        if (history.visits().isEmpty()) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, new CliSaid.NoVisit(file.toString()));
        }
        if (id == null) {
            return history.visits().getLast();
        }
        return history.visits().stream()
                .filter(visit -> visit.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new CommandFailure(
                        CommandFailure.INPUT_REFUSED,
                        new CliSaid.NoSuchVisit(
                                file.toString(),
                                id,
                                Listed.commas(history.visits().stream()
                                        .map(Visit::id)
                                        .map(Said::verbatim)
                                        .toList()))));
    }
}
