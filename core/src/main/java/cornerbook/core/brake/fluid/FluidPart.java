package cornerbook.core.brake.fluid;

import cornerbook.core.say.Said;

/** What a car's data tell of brake fluid, as a person calls it. */
enum FluidPart implements Said {
    INTERVAL
}
