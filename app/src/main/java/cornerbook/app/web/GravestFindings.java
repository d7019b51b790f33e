package cornerbook.app.web;

import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Finding;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The gravest finding of each car's latest visit. A list shows all cars at once, so a car is judged again only when
 * something in its history has changed; as the same history always gives the same findings, nothing else can age.
 */
final class GravestFindings {
    private final Function<CarHistory, Optional<Assessment>> assessor;
    private final Map<String, Judged> judgedByCar = new ConcurrentHashMap<>();

    GravestFindings(Function<CarHistory, Optional<Assessment>> assessor) {
        this.assessor = assessor;
    }

    private record Judged(CarHistory history, @Nullable Finding gravest) {}

    /** Null when nothing was judged. */
    @Nullable
    Finding of(CarHistory history) {
        var known = judgedByCar.get(history.vehicle().id());
        if (known == null || !known.history().equals(history)) {
            known = new Judged(
                    history,
                    assessor.apply(history)
                            .flatMap(
                                    assessment -> assessment.findings().stream().findFirst())
                            .orElse(null));
            judgedByCar.put(history.vehicle().id(), known);
        }
        return known.gravest();
    }
}
