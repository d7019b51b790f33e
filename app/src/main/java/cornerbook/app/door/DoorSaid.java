package cornerbook.app.door;

import cornerbook.app.text.UnfitCharacter;
import cornerbook.core.say.Said;

/** What people are told at the door: who is let in, how tablets are paired, and where the pages are. */
public interface DoorSaid extends Said {
    record OnlyHere() implements DoorSaid {}

    record AnotherSite() implements DoorSaid {}

    record NotPaired() implements DoorSaid {}

    record UnfitAddress(UnfitCharacter character) implements DoorSaid {}

    record NoPage() implements DoorSaid {}

    record PortInUse(String port) implements DoorSaid {}

    record NotServed(String port) implements DoorSaid {}

    record CodeOrPinWrong() implements DoorSaid {}

    record WrongTooOften(int times, long minutes) implements DoorSaid {}

    record PinWrong() implements DoorSaid {}

    record PinNeeded(int shortest, int longest) implements DoorSaid {}

    record PinGuessed() implements DoorSaid {}

    record PersonNeedsName(int longest) implements DoorSaid {}

    record TabletNameTooLong(int longest) implements DoorSaid {}

    record OnlyOnTablet() implements DoorSaid {}

    /** A choice that the pages do not have. */
    enum Unknown implements DoorSaid {
        UNITS,
        LOOK,
        WALK,
        LANGUAGE
    }
}
