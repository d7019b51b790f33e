package cornerbook.app.web;

import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Finding;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The gravest finding of each car's latest visit. A list shows all cars at once, so a car is judged again only when
 * something in its history or the assessor has changed; the same of both always give the same findings.
 */
final class GravestFindings {
    private final Supplier<Assessor> assessors;
    private final Function<CarHistory, Optional<Assessment>> judge;
    private final Map<String, Judged> judgedByCar = new ConcurrentHashMap<>();

    GravestFindings(Supplier<Assessor> assessors, Function<CarHistory, Optional<Assessment>> judge) {
        this.assessors = assessors;
        this.judge = judge;
    }

    private record Judged(
            CarHistory history, Assessor assessor, @Nullable Finding gravest) {}

    /** Null when nothing was judged. */
    @Nullable
    Finding of(CarHistory history) {
        var assessor = assessors.get();
        var known = judgedByCar.get(history.vehicle().id());
        if (known == null || known.assessor() != assessor || !known.history().equals(history)) {
            known = new Judged(
                    history,
                    assessor,
                    judge.apply(history)
                            .flatMap(
                                    assessment -> assessment.findings().stream().findFirst())
                            .orElse(null));
            judgedByCar.put(history.vehicle().id(), known);
        }
        return known.gravest();
    }
}
