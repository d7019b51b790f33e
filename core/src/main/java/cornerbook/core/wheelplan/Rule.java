package cornerbook.core.wheelplan;

import cornerbook.core.say.Said;

/** A rule that every assignment of a plan has to keep; each can be left out. */
public enum Rule implements Said {
    DIRECTIONAL,
    SIZE,
    /** Two tyres of an axle differ in depth by no more than allowed. */
    SAME_AXLE,
    /** Nor do the four where the car drives them all. */
    ALL_WHEEL,
    /** The deeper pair goes to the rear where it is deeper by more than allowed. */
    DEEPER_PAIR_REAR
}
