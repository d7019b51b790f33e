package cornerbook.core.wheelplan;

import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.PlanSaid.Input;

/**
 * How far the four tyres of an all-wheel-drive car may differ, in the kind that the car's own manual uses. A tyre that is
 * worn by w has lost 2π w of its circumference, so that both kinds are one limit on depth: 2/32 in of tread is 10 mm of
 * circumference.
 *
 * @param kind what the manual limits
 * @param valueMm greatest difference allowed, mm of that kind, above 0
 */
public record AllWheelLimit(Kind kind, double valueMm) {
    /** What is compared. */
    public enum Kind implements Said {
        TREAD_DEPTH,
        ROLLING_CIRCUMFERENCE
    }

    public AllWheelLimit {
        PlanRules.positive(Input.ALL_WHEEL_LIMIT, valueMm);
    }

    /** The same limit as a difference of tread depth, mm. */
    public double depthMm() {
        return kind == Kind.TREAD_DEPTH ? valueMm : valueMm / (2 * Math.PI);
    }
}
