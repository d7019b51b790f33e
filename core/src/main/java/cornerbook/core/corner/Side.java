package cornerbook.core.corner;

/** Side of the car as seen from the driver's seat, facing forward. */
public enum Side {
    LEFT,
    RIGHT
}
