package cornerbook.app.book.rack;

import cornerbook.core.store.Rack;

/**
 * A rack of the store as it stands.
 *
 * @param turn 0 as it was named first, and one more with each change
 */
public record KeptRack(String id, int turn, Rack rack) {}
