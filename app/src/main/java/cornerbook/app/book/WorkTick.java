package cornerbook.app.book;

import java.time.Instant;

/**
 * A step of the work that was ticked, or whose tick was taken back.
 *
 * @param id unique in the book, born at the tablet
 * @param tick which step, as the bay sheet names it
 */
public record WorkTick(String id, String tick, boolean done, String person, Instant madeAt) {}
