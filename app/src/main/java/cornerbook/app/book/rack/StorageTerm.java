package cornerbook.app.book.rack;

import java.time.LocalDate;

/**
 * What was agreed about how long a set is stored.
 *
 * @param until the last day that is agreed or paid for
 */
public record StorageTerm(LocalDate until, By by) {}
