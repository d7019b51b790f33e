package cornerbook.core.brake;

import cornerbook.core.say.Said;

/** What a car's data tell of a brake, as a person calls it. */
public enum BrakePart implements Said {
    PAD_NEW,
    PAD_MINIMUM,
    DISC_NEW,
    DISC_MINIMUM,
    RUNOUT_LIMIT,
    THICKNESS_VARIATION_LIMIT,
    REFINISH_THICKNESS,
    DISC_MASS,
    DISC_DIAMETER,
    DISC_TEMPERATURE_LIMIT,
    PISTONS,
    DRUM_NEW,
    DRUM_DISCARD,
    LINING_NEW,
    LINING_MINIMUM,
    PARKING_LINING_MINIMUM
}
