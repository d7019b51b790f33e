package cornerbook.core.days;

import cornerbook.core.say.Said;

/** What is refused of the days of a shop. */
public interface DaysSaid extends Said {
    /** Something that is no hours of work. */
    record NoHours(String typed) implements DaysSaid {}

    /** Hours of which one begins before the one before has ended. */
    record HoursOverlap(String typed) implements DaysSaid {}
}
