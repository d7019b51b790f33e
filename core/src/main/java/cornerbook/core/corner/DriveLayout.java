package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** Which axles are driven. */
public enum DriveLayout implements Said {
    FRONT,
    REAR,
    ALL;

    /** Whether the wheels of this axle are driven. */
    public boolean drives(Axle axle) {
        return this == ALL || (this == FRONT) == (axle == Axle.FRONT);
    }
}
