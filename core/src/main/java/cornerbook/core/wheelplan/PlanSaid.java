package cornerbook.core.wheelplan;

import cornerbook.core.quantity.AboutPart;
import cornerbook.core.say.Said;

/** What is said about the limits of a wheel plan. */
public interface PlanSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements PlanSaid {
        SAME_AXLE_LIMIT,
        ALL_WHEEL_LIMIT
    }

    record NotPositive(Input what, Said value) implements PlanSaid, AboutPart {}
}
