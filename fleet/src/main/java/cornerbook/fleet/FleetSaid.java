package cornerbook.fleet;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Said;

/** What a night says to people. */
sealed interface FleetSaid extends Said {
    /** How the verb is called. */
    record Usage() implements FleetSaid {}

    /** A day that is none. */
    record NoDay(String text) implements FleetSaid {}

    /** Nothing to read in a folder. */
    record NoCars(String folder) implements FleetSaid {}

    /** A climate file that cannot be read. */
    record NoClimate(String file) implements FleetSaid {}

    /** More cars than can be made. */
    record TooManyCars(int most) implements FleetSaid {}

    /** Cars were made. */
    record Made(int cars, String folder) implements FleetSaid {}

    /** The folder to be made is there. */
    record IsThere(String folder) implements FleetSaid {}

    /** A file that is no text. */
    record NoText(String file) implements FleetSaid {}

    /** A car of a book that cannot be read. */
    record Unreadable(String car) implements FleetSaid {}

    /** A car that nobody has seen yet. */
    record NoVisit(String car) implements FleetSaid {}

    /** A car that stands in the input more than once. */
    record Twice(String car) implements FleetSaid {}

    /** More cars stand in the input more than once than by mistake. */
    record ManyTwice(int most) implements FleetSaid {}

    /** The program cannot judge a car. */
    record Fault(String visit, String kind) implements FleetSaid {}

    /** No tables of a night in a folder. */
    record NoNight(String folder) implements FleetSaid {}

    /** Tables of a later night than the one that would take them over. */
    record LaterNight(String folder, Day day, Day today) implements FleetSaid {}

    /** Tables of another program, whose knowledge this one does not read. */
    record OtherProgram(String folder) implements FleetSaid {}

    /** What came of a night that took over what did not move. */
    record DoneSince(long cars, long anew, long setAside, Amount time, String folder) implements FleetSaid {}

    /** What came of a night. */
    record Done(long cars, long setAside, Amount time, String folder) implements FleetSaid {}
}
