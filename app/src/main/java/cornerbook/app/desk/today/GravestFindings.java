package cornerbook.app.desk.today;

import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.judge.Judged;
import cornerbook.core.assess.Assessor;
import cornerbook.core.finding.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The gravest finding of each car's latest visit. A list shows all cars at once, so a car is read and judged again only when
 * its history or the assessor has changed; the same of both always give the same findings. A car that cannot be judged
 * stands in the list as such, and is tried anew each time.
 */
final class GravestFindings {
    private final Supplier<Assessor> assessors;
    private final Function<String, List<Finding>> judge;
    private final Map<String, Kept> keptByCar = new ConcurrentHashMap<>();

    /**
     * Keeps what is judged.
     *
     * @param judge what is found on the car of an id at its latest visit, gravest first
     */
    GravestFindings(Supplier<Assessor> assessors, Function<String, List<Finding>> judge) {
        this.assessors = assessors;
        this.judge = judge;
    }

    private record Kept(long revision, Assessor assessor, Judged.Made<Optional<Finding>> gravest) {}

    /** Empty when there is nothing to judge. */
    Judged<Optional<Finding>> of(VehicleSummary vehicle) {
        var assessor = assessors.get();
        var known = keptByCar.get(vehicle.id());
        if (known != null && known.assessor() == assessor && known.revision() == vehicle.revision()) {
            return known.gravest();
        }
        var judged = Judged.of(
                "car " + vehicle.id(),
                () -> judge.apply(vehicle.id()).stream()
                        .filter(finding -> !finding.subject().part().isOfShop())
                        .findFirst());
        if (judged instanceof Judged.Made<Optional<Finding>> made) {
            keptByCar.put(vehicle.id(), new Kept(vehicle.revision(), assessor, made));
        }
        return judged;
    }
}
