package cornerbook.core.brake.drag;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;

/** What is said of brakes that drag. */
public interface DragSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements DragSaid {
        SPEED,
        MINUTES,
        ROLLING_CIRCUMFERENCE,
        DISC_TEMPERATURE,
        AIR
    }

    /** What is computed. */
    enum Computed implements DragSaid {
        AREA,
        HEAT_CAPACITY,
        LEAST_COOLING,
        MOST_COOLING,
        LEAST_SHARE,
        DIFFERENCE,
        LEAST_FORCE,
        MOST_FORCE
    }

    /** How it is computed, where no number goes in. */
    enum Way implements DragSaid {
        HOTTER_LESS_COOLER
    }

    /** Where it comes from. */
    enum Origin implements DragSaid {
        DISC_GEOMETRY,
        CAST_IRON,
        MEASURED_IN_VANES,
        IN_THE_WIND,
        HEAT_BALANCE,
        AS_READ
    }

    /** What to mind. */
    enum Caution implements DragSaid {
        HOT_DISCS,
        READ_AT_ONCE,
        ROUGHLY,
        DRAGS
    }

    /** A disc that is below the air that cools it. */
    record CoolerThanAir(Corner corner, Said disc, Said air) implements DragSaid {}
}
