package cornerbook.app.cli;

import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.record.LeavingCheck;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.judge.Judged;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.release.ReleaseRule;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads visit files for the verbs. */
final class SourceFile {
    private SourceFile() {}

    static CarRecord read(Path file) {
        return new SourceFiles(List.of(file), (path, record) -> List.of(), record -> {})
                .iterator()
                .next();
    }

    /** What is wrong with a file, a sentence each. */
    static List<Said> sentences(Path file, VisitFile.Refused refused) {
        return refused.problems().stream()
                .<Said>map(problem -> new CliSaid.OfFile(
                        file.toString(), problem.where().isEmpty() ? null : problem.where(), problem.message()))
                .toList();
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

    /** What judging a visit of it gives; refuses with one sentence, with the id in the log, when the program has a fault with it. */
    static <T> T judge(Path file, Visit visit, Supplier<T> judging) {
        return switch (Judged.<T>of("visit " + visit.id(), judging)) {
            case Judged.Made<T> made -> made.value();
            case Judged.Failed<T> failed ->
                throw new CommandFailure(
                        CommandFailure.FAULT,
                        new CliSaid.VisitNotJudged(visit.id(), file.toString(), failed.faultId()));
        };
    }
}
