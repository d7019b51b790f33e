package cornerbook.core.days.plan;

import org.jspecify.annotations.Nullable;

/**
 * Where a visit stands in a plan, and why.
 *
 * @param station null where it has no place
 * @param start minute of the day; of a visit without a place it says nothing
 */
public record Placement(Wanted visit, @Nullable Station station, int start, PlanSaid why) {
    /** Whether it has another day than was agreed. */
    public boolean isMoved() {
        var agreed = visit.agreed();
        return agreed != null && station != null && !agreed.day().equals(station.day());
    }

    public boolean isKept() {
        return why instanceof PlanSaid.Stays;
    }

    /** Whether it had no day before. */
    public boolean isNew() {
        return visit.agreed() == null && station != null;
    }
}
