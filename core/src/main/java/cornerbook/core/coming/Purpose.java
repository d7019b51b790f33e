package cornerbook.core.coming;

import cornerbook.core.say.Said;

/** Why somebody is called or written to, as far as a person may want the one and not the other. */
public enum Purpose implements Said {
    /** Work on which safety depends, of a car that the shop has worked on. */
    SAFETY,
    /** The season's change-over, and the next visit. */
    SEASON,
    /** Anything else, as an offer. */
    OTHER
}
