package cornerbook.core.store;

import cornerbook.core.say.Said;
import java.util.Optional;

/** How the wheels of a set lie in the store. */
public enum Lying implements Said {
    HUNG,
    STACKED,
    STANDING;

    /** What to do otherwise when tyres lie so for a season. */
    public enum Caution implements Said {
        /** Tyres on rims that stand press flat where they touch the ground. */
        HANG_OR_STACK,
        /** Tyres without rims that are stacked or hung are pulled out of shape. */
        STAND_AND_TURN
    }

    /**
     * On rims they hang or are stacked, four at most; without rims they stand, and are turned from time to time. As tyre manufacturers
     * publish it (for one, nittonew.mywhc.ca/tires-101-1/tire-storage, read on 2026-11-30: on rims stacked, four at most; without rims
     * upright, neither stacked nor hung). That wheels on rims may hang, and do not stand for long: common practice, no source. The tyre
     * manufacturer's advice outranks it.
     *
     * @return empty when they lie well
     */
    public Optional<Caution> caution(boolean onRims) {
        if (onRims) {
            return this == STANDING ? Optional.of(Caution.HANG_OR_STACK) : Optional.empty();
        }
        return this == STANDING ? Optional.empty() : Optional.of(Caution.STAND_AND_TURN);
    }
}
