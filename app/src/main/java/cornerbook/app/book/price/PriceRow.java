package cornerbook.app.book.price;

import java.time.Instant;
import java.time.LocalDate;

/**
 * What a thing costs from a day on.
 *
 * @param person may be empty at the desk, where nobody is known
 */
public record PriceRow(PriceKey key, PriceValue value, LocalDate begins, String person, Instant madeAt) {}
