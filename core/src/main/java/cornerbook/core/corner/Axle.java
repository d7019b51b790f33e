package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** One of the two axles of a car. */
public enum Axle implements Said {
    FRONT,
    REAR
}
