package cornerbook.core.corner;

/** One of the two axles of a car. */
public enum Axle {
    FRONT,
    REAR
}
