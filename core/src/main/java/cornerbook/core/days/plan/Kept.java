package cornerbook.core.days.plan;

/**
 * A visit that keeps the day and the time that were agreed.
 *
 * @param start minute of the day
 */
public record Kept(Wanted visit, Station station, int start) {}
