package cornerbook.app.calibration.fleet;

import cornerbook.core.say.Said;
import java.util.Set;

/** A fleet with some of the effects. */
@SuppressWarnings("ImmutableEnumChecker") // every set is made by Set.of
public enum Scenario implements Said {
    CONTROL(),
    GAUGE_OFFSET(Effect.GAUGE_OFFSET),
    WEAR_SLOWS(Effect.WEAR_SLOWS),
    SEASONS_DIFFER(Effect.SEASONS_DIFFER),
    GROOVES_ALIKE(Effect.GROOVES_ALIKE),
    GROSS_ERRORS(Effect.GROSS_ERRORS),
    DRIVERS_CHANGE(Effect.DRIVERS_CHANGE),
    /** Who comes is told: that is no harder, but another thing to know. */
    DRIVERS_TOLD(Effect.DRIVERS_CHANGE_AND_IT_IS_TOLD),
    ALL(
            Effect.GAUGE_OFFSET,
            Effect.WEAR_SLOWS,
            Effect.SEASONS_DIFFER,
            Effect.GROOVES_ALIKE,
            Effect.GROSS_ERRORS,
            Effect.DRIVERS_CHANGE);

    private final Set<Effect> effects;

    Scenario(Effect... effects) {
        this.effects = Set.of(effects);
    }

    boolean has(Effect effect) {
        return effects.contains(effect);
    }
}
