package cornerbook.core.brake.pads;

/**
 * What can be wrong with the brake of one corner, with how often it is before anything was seen, in percent. The
 * percentages are common practice, no source; they add up to 100.
 */
public enum BrakeCause {
    SLIDE_PINS_SEIZED(10, "seized slide pins"),
    PISTON_SEIZED(5, "a seized piston"),
    PAD_STUCK_IN_BRACKET(10, "a pad stuck in its bracket"),
    HOSE_RESTRICTED(1.5, "a brake hose that holds pressure"),
    PARKING_BRAKE_DRAGGING(3, "a dragging parking brake"),
    DISC_LITTLE_USED(10, "a disc that is too little used"),
    NOTHING(60.5, "nothing out of order");

    private final double priorPercent;
    private final String words;

    BrakeCause(double priorPercent, String words) {
        this.priorPercent = priorPercent;
        this.words = words;
    }

    /** The cause as it stands in a sentence, as "seized slide pins". */
    public String words() {
        return words;
    }

    double priorPercent() {
        return priorPercent;
    }
}
