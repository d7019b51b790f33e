package cornerbook.core.brake.pads;

import cornerbook.core.say.Said;

/**
 * What can be wrong with the brake of one corner, with how often it is before anything was seen, in percent. The
 * percentages are common practice, no source; they add up to 100.
 */
public enum BrakeCause implements Said {
    SLIDE_PINS_SEIZED(10),
    PISTON_SEIZED(5),
    PAD_STUCK_IN_BRACKET(10),
    HOSE_RESTRICTED(1.5),
    PARKING_BRAKE_DRAGGING(3),
    DISC_LITTLE_USED(10),
    NOTHING(60.5);

    private final double priorPercent;

    BrakeCause(double priorPercent) {
        this.priorPercent = priorPercent;
    }

    double priorPercent() {
        return priorPercent;
    }
}
