package cornerbook.app.desk.plan;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import org.jspecify.annotations.Nullable;

/**
 * Where each wheel goes now and in the seasons to come.
 *
 * @param set null when there is no plan
 */
public record PlanPage(
        CarHistory history, Visit visit, @Nullable PlannedSet set) {}
