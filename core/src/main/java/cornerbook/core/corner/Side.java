package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** Side of the car as seen from the driver's seat, facing forward. */
public enum Side implements Said {
    LEFT,
    RIGHT
}
