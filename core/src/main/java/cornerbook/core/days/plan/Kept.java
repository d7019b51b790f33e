package cornerbook.core.days.plan;

import org.jspecify.annotations.Nullable;

/**
 * A visit that keeps the day and the time that were agreed, or the place where its car is worked on.
 *
 * @param station null where its car is worked on and nobody is at work any more
 * @param start minute of the day
 */
public record Kept(Wanted visit, @Nullable Station station, int start, PlanSaid.Stays why) {}
