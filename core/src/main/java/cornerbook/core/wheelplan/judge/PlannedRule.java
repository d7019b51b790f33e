package cornerbook.core.wheelplan.judge;

import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.Rule;

/**
 * A rule as a wheel plan took it.
 *
 * @param words the rule with its figure, one sentence without its full stop
 * @param source where it comes from
 */
public record PlannedRule(Rule rule, Said words, Said source, State state) {
    /** What the plan made of it. */
    public enum State {
        KEPT,
        /** No assignment keeps it. */
        LEFT_OUT,
        /** Somebody asked for a plan without it. */
        SWITCHED_OFF,
        /** The car may have such a limit, and nobody has looked it up. */
        NOT_KNOWN
    }
}
