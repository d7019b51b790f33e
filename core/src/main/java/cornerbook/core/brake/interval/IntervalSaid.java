package cornerbook.core.brake.interval;

import cornerbook.core.say.Said;

/** What is said of the interval at which guides are cleaned. */
public interface IntervalSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements IntervalSaid {
        SERVICE_PRICE,
        SEIZED_PRICE,
        PADS,
        SALT_SHARE,
        FRICTION_SHARE,
        DISTANCE
    }

    /** What is computed. */
    enum Computed implements IntervalSaid {
        CHANCE_OF_ONE,
        CHANCE_OF_ANY,
        MEAN_TIME,
        COST_PER_YEAR,
        BEST
    }

    /** How it is computed, where no number goes in. */
    enum Way implements IntervalSaid {
        WHERE_COST_IS_LEAST,
        AREA_UNDER_FREE
    }

    /** Where it comes from. */
    enum Origin implements IntervalSaid {
        WEIBULL,
        SHARED_BY_CAR,
        AGE_REPLACEMENT
    }

    /** What to mind. */
    enum Caution implements IntervalSaid {
        MAKER_FIRST,
        LOOK_AT_EACH_VISIT,
        CHANCE_IS_HIGH,
        HAZARD_IS_USUAL
    }
}
