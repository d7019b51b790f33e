package cornerbook.app.cli;

import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.record.LeavingCheck;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.cli.print.Progress;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.judge.Judged;
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
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The visit files that a verb is given, and what the verbs do with them. They come one after the other, never many of them in
 * memory; those that come next are read meanwhile, on all processors. When one cannot stand, no further car is given, and after
 * the last file all that was wrong is told.
 */
final class SourceFiles implements Iterable<CarRecord> {
    private static final int READ_AHEAD = 64;

    private final List<Path> files;
    private final BiFunction<Path, CarRecord, List<Said>> look;
    private final Consumer<CarRecord> given;

    /**
     * Those files.
     *
     * @param look what is asked about a car before it is taken, a sentence each
     * @param given is told of each car that is given
     */
    SourceFiles(List<Path> files, BiFunction<Path, CarRecord, List<Said>> look, Consumer<CarRecord> given) {
        this.files = List.copyOf(files);
        this.look = look;
        this.given = given;
        for (var file : files) {
            if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
                throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.NoFile(file.toString()));
            }
        }
    }

    @Override
    public Iterator<CarRecord> iterator() {
        return new Reading();
    }

    private record Source(Path file, VisitFile.Result result) {}

    /** The files are read in the order of the list, so that the same list always tells the same. */
    private final class Reading implements Iterator<CarRecord> {
        private final LocalDate today = LocalDate.now(ZoneId.systemDefault());
        private final Iterator<Path> left = files.iterator();
        private final Deque<CompletableFuture<Source>> ahead = new ArrayDeque<>();
        private final List<Said> sentences = new ArrayList<>();
        private final Deque<CarRecord> next = new ArrayDeque<>();
        private final Progress progress = Progress.of(files.size());

        @Override
        public boolean hasNext() {
            while (next.isEmpty() && hasFile()) {
                var source = ahead.removeFirst().join();
                progress.advance();
                switch (source.result()) {
                    case VisitFile.Read read -> take(source.file(), read.record());
                    case VisitFile.Refused refused -> sentences.addAll(sentences(source.file(), refused));
                }
            }
            if (next.isEmpty()) {
                progress.end();
                if (!sentences.isEmpty()) {
                    throw new CommandFailure(CommandFailure.INPUT_REFUSED, sentences);
                }
            }
            return !next.isEmpty();
        }

        private boolean hasFile() {
            while (ahead.size() < READ_AHEAD && left.hasNext()) {
                var file = left.next();
                ahead.addLast(CompletableFuture.supplyAsync(() -> new Source(file, VisitFile.read(file, today))));
            }
            return !ahead.isEmpty();
        }

        private void take(Path file, CarRecord record) {
            sentences.addAll(look.apply(file, record));
            if (sentences.isEmpty()) {
                next.addLast(record);
            }
        }

        @Override
        public CarRecord next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            var record = next.removeFirst();
            given.accept(record);
            return record;
        }
    }

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
