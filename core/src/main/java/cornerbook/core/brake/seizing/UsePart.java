package cornerbook.core.brake.seizing;

import cornerbook.core.say.Said;

/** What a car's data tell of its use, as a person calls it. */
enum UsePart implements Said {
    SALT_SHARE,
    FRICTION_BRAKE_SHARE
}
