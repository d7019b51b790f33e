package cornerbook.core.corner;

/** Which axles are driven. */
public enum DriveLayout {
    FRONT,
    REAR,
    ALL;

    /** Whether the wheels of this axle are driven. */
    public boolean drives(Axle axle) {
        return this == ALL || (this == FRONT) == (axle == Axle.FRONT);
    }
}
