package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** Where across the tread (groove), or on which side of the disc (pad: inner or outer), something is measured. */
public enum Spot implements Said {
    INNER,
    CENTRE,
    OUTER
}
