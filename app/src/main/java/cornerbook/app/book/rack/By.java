package cornerbook.app.book.rack;

import java.time.Instant;

/**
 * Who did something in the store, and when.
 *
 * @param person may be empty at the desk, where nobody is known
 */
public record By(String person, Instant at) {}
