package cornerbook.app.knowledge;

import java.time.LocalDate;

/**
 * How much stands behind what was learned.
 *
 * @param cars that it was learned from
 * @param shops whose cars they are
 * @param visits of these cars
 * @param from the day of the first of them
 * @param until the day of the last
 */
public record Extent(int cars, int shops, long visits, LocalDate from, LocalDate until) {}
