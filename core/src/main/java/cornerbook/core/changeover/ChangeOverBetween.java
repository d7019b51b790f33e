package cornerbook.core.changeover;

import cornerbook.core.say.Said;
import java.time.LocalDate;

/**
 * The days of the coming change-over, where a sentence goes on.
 *
 * @param byLaw whether the law, and not the climate alone, sets an end of them
 * @param place whose climate says so, as people call it
 */
public record ChangeOverBetween(LocalDate from, LocalDate until, boolean byLaw, Said place) implements Said {}
