package cornerbook.core.car;

import cornerbook.core.say.Said;

/** What is said of the work at the brakes: what goes where, and why. */
public interface ServiceSaid extends Said {
    /** What is lubricated, or stays dry. */
    enum LubricantPlace implements ServiceSaid {
        SLIDE_PINS,
        RETAINING_PINS,
        ABUTMENTS,
        BOOTS_AND_PISTON_SEAL,
        PAD_BACKS,
        FRICTION_FACES,
        SHOE_RESTS,
        ADJUSTER
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
