package cornerbook.core.store;

import cornerbook.core.say.Said;

/** What is refused of the map of a store. */
public sealed interface StoreSaid extends Said {
    /** A count of shelves, of places on a shelf, or of sets at a place that no rack has. */
    record CountOutOfRange(Counted counted, int least, int most) implements StoreSaid {}

    /** A pattern of names that is empty or does not fit on a label. */
    record NoPattern(int longest) implements StoreSaid {}

    /** A pattern that would give two places one name, or has a number for which there is nothing to count. */
    record PatternLacksNumbers(int asked, int found) implements StoreSaid {}

    /** Metres that no store has. */
    record MetresOutOfRange(int least, int most) implements StoreSaid {}

    /** How wide a place is. */
    record WidthOutOfRange(int most) implements StoreSaid {}

    /** The name of a room that is empty or too long. */
    record NoRoom(int longest) implements StoreSaid {}

    /** How long a set takes to come from a store elsewhere. */
    record WorkingDaysOutOfRange(int most) implements StoreSaid {}

    /** What is counted of a rack. */
    enum Counted implements StoreSaid {
        SHELVES,
        PLACES,
        SETS
    }
}
