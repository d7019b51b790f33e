package cornerbook.core.why;

import cornerbook.core.say.Said;

/** How a number was come by where no standard and no handbook says it. */
public enum Basis implements Said {
    GIVEN,
    TABLE,
    /** A fact of the trade that no source tells. */
    COMMON_PRACTICE,
    FROM_MEMORY,
    AS_ENTERED
}
