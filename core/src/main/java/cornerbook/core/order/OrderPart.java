package cornerbook.core.order;

import cornerbook.core.say.Said;

/** What a shop orders, in the order in which it is listed. */
public enum OrderPart implements Said {
    TYRE,
    PADS,
    DISCS,
    SHOES,
    DRUMS,
    BATTERY,
    SENSOR,
    /** Studs with nuts, or bolts, of a wheel. */
    FASTENER,
    /** One change of it. */
    BRAKE_FLUID
}
