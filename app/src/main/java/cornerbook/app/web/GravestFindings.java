package cornerbook.app.web;

import cornerbook.app.book.VehicleSummary;
import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.Finding;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The gravest finding of each car's latest visit. A list shows all cars at once, so a car is read and judged again only when
 * its history or the assessor has changed; the same of both always give the same findings.
 */
final class GravestFindings {
    private final Supplier<Assessor> assessors;
    private final Function<String, Optional<Assessment>> judge;
    private final Map<String, Judged> judgedByCar = new ConcurrentHashMap<>();

    /**
     * Keeps what is judged.
     *
     * @param judge reads and judges the car of an id
     */
    GravestFindings(Supplier<Assessor> assessors, Function<String, Optional<Assessment>> judge) {
        this.assessors = assessors;
        this.judge = judge;
    }

    private record Judged(
            long revision, Assessor assessor, @Nullable Finding gravest) {}

    /** Null when nothing was judged. */
    @Nullable
    Finding of(VehicleSummary vehicle) {
        var assessor = assessors.get();
        var known = judgedByCar.get(vehicle.id());
        if (known == null || known.assessor() != assessor || known.revision() != vehicle.revision()) {
            known = new Judged(
                    vehicle.revision(),
                    assessor,
                    judge.apply(vehicle.id())
                            .flatMap(
                                    assessment -> assessment.findings().stream().findFirst())
                            .orElse(null));
            judgedByCar.put(vehicle.id(), known);
        }
        return known.gravest();
    }
}
