package cornerbook.app.desk.store;

import cornerbook.core.say.Said;

/** What the pages of the store refuse. */
sealed interface StoreSaid extends Said {
    /** What was typed for how many is no whole number. */
    record NoWholeNumber(String typed) implements StoreSaid {}

    record NoRack() implements StoreSaid {}

    /** Labels were asked for where no rack stands. */
    record NoPlaces() implements StoreSaid {}

    /** A code that is neither a wheel's nor a place's. */
    record UnknownCode(String code) implements StoreSaid {}

    /** How many sets are carried at once. */
    record NoCarried(int least, int most) implements StoreSaid {}

    record NoSet() implements StoreSaid {}

    /** Nobody said how the wheels lie. */
    record NoLying() implements StoreSaid {}

    /** What was typed is no date. */
    record NoDay(String example) implements StoreSaid {}
    /** Its photos are kept with the visit at which the car came on it. */
    record NoVisitOnSet() implements StoreSaid {}

    /** Something that is no time of day. */
    record NoHour(String typed) implements StoreSaid {}

    /** One of the sets that a form names was moved meanwhile. */
    record SetIsNotElsewhere() implements StoreSaid {}

    record NoCount() implements StoreSaid {}

    /** A wheel was scanned before any place. */
    record PlaceFirst() implements StoreSaid {}

    record NoMonths(int least, int most) implements StoreSaid {}

    /** A place was scanned where a wheel is to be. */
    record PlaceNotWheel(String code) implements StoreSaid {}
}
