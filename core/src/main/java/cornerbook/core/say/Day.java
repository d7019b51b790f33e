package cornerbook.core.say;

import java.time.LocalDate;

/** A day of the calendar, where it is said alone. */
public record Day(LocalDate date) implements Said {}
