package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** A corner in full: "left front". A corner alone is told by its letters. */
public record CornerName(Corner corner) implements Said {}
