package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** A wheel set by its season: "winter set". */
public record SetOf(SeasonKind season) implements Said {}
