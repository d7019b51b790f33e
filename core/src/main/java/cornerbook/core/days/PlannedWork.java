package cornerbook.core.days;

import cornerbook.core.say.Said;

/** What a car comes for, as far as it decides how long the visit takes. */
public enum PlannedWork implements Said {
    /** The wheel sets changed. 30 to 45 minutes: common practice, no source. */
    WHEELS(35),
    /** The brakes of four corners freed and measured. What wheels and brakes take together, less the wheels. */
    BRAKES(90),
    /** Both. 1.75 to 2.5 hours: common practice, no source. */
    WHEELS_AND_BRAKES(125),
    /** The wheels tightened again. Common practice, no source. */
    RETORQUE(15),
    /** Anything else. Common practice, no source. */
    OTHER(60);

    private final int usualMinutes;

    PlannedWork(int usualMinutes) {
        this.usualMinutes = usualMinutes;
    }

    /** How long it takes where the shop has not said otherwise, min: between the two ends of what is usual, as factors. */
    public int usualMinutes() {
        return usualMinutes;
    }

    /** Whether a set of the car that is not on it has to be there. */
    public boolean changesWheels() {
        return this == WHEELS || this == WHEELS_AND_BRAKES;
    }
}
