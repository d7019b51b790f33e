package cornerbook.core.corner;

/** Where across the tread (groove), or on which side of the disc (pad: inner or outer), something is measured. */
public enum Spot {
    INNER,
    CENTRE,
    OUTER
}
