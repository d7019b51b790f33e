package cornerbook.core.changeover;

import cornerbook.core.say.Said;

/** What is said of the days for changing wheels over. */
public interface ChangeOverSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements ChangeOverSaid {
        MONTHLY_MEAN,
        SPREAD,
        CARS,
        CARS_PER_DAY
    }

    /** What is computed. */
    enum Computed implements ChangeOverSaid {
        NORMAL_IN_AUTUMN,
        CHANCE_IN_AUTUMN,
        NORMAL_IN_SPRING,
        CHANCE_IN_SPRING
    }

    /** How it is computed, where no number goes in. */
    enum Way implements ChangeOverSaid {
        HARMONICS
    }

    /** Where it comes from. */
    enum Origin implements ChangeOverSaid {
        EPSTEIN,
        SEVEN_DEGREES
    }

    /** What to mind. */
    enum Caution implements ChangeOverSaid {
        FORECAST_FIRST,
        LAW_FIRST,
        SPREAD_IS_USUAL
    }

    record NotAllMonths(int months) implements ChangeOverSaid {}
}
