package cornerbook.core.coming;

import java.time.LocalDate;

/**
 * Something for which a customer is to come back.
 *
 * @param day by which
 */
public record DueMatter(Matter matter, LocalDate day) {}
