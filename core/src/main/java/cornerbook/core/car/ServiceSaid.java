package cornerbook.core.car;

import cornerbook.core.say.Said;

/** What is said of the work at the brakes: what to mind, and what goes where. */
public interface ServiceSaid extends Said {
    /** What to mind in a step. */
    enum ServiceCaution implements ServiceSaid {
        DUST,
        GRINDING,
        FLUID_RISES,
        HIGH_VOLTAGE,
        SERVICE_MODE_FIRST,
        SUPPORT_12_V,
        DIAL_AT_SAME_RADIUS,
        BOTH_SIDES_TOGETHER,
        BOLTS_USED_ONCE,
        PUMP_THE_PEDAL,
        LET_IT_SLEEP,
        HOT_DISCS,
        LET_IT_REST,
        STANDBY_ASLEEP,
        TERMINALS,
        TERMINALS_ELECTRIC,
        NEVER_CHARGE_FROZEN,
        CHARGING_GAS,
        CHARGER_FOR_AGM,
        LITHIUM_ABOVE_ZERO,
        CHARGED_BY_CONVERTER,
        DAMAGED_STUD_STOPS
    }

    /** What is lubricated, or stays dry. */
    enum LubricantPlace implements ServiceSaid {
        SLIDE_PINS,
        RETAINING_PINS,
        ABUTMENTS,
        BOOTS_AND_PISTON_SEAL,
        PAD_BACKS,
        FRICTION_FACES
    }

    /** What goes there. */
    enum LubricantKind implements ServiceSaid {
        RUBBER_SAFE_GREASE,
        METAL_CONTACT_PASTE,
        AS_THE_PAD_MAKER_ASKS,
        NOTHING
    }

    /** Why this and no other. */
    enum LubricantReason implements ServiceSaid {
        MINERAL_GREASE_SWELLS,
        METAL_ON_METAL,
        METAL_ON_METAL_AND_SALT,
        RUBBER,
        MOTOR_PRESSES_THERE,
        PASTE_CARRIES_DIRT,
        TAKES_BRAKING_AWAY
    }
}
