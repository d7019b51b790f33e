package cornerbook.app.cli;

import cornerbook.app.judge.Judged;
import cornerbook.core.car.Visit;
import java.nio.file.Path;
import java.util.function.Supplier;

/** Judges a visit of a file for the verbs, so that a fault is told with its visit and its id in the log. */
final class CarFence {
    private CarFence() {}

    /** What judging gives; refuses with one sentence when the program has a fault with this visit. */
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
