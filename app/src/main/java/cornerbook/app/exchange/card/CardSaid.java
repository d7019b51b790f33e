package cornerbook.app.exchange.card;

import cornerbook.core.say.Said;

/** What people are told of a card. */
public sealed interface CardSaid extends Said {
    /** There is no card in what was given. */
    record NoCard() implements CardSaid {}

    /** More cards than are read at once. */
    record TooMany(int most) implements CardSaid {}

    /** The card begins and never ends: the file was cut. */
    record NotFinished() implements CardSaid {}

    record NoName() implements CardSaid {}

    record NameTooLong(int most) implements CardSaid {}

    /** It has signs that no text has. */
    record UnfitText() implements CardSaid {}

    /** Of a group, a place or a thing. */
    record NobodysCard() implements CardSaid {}

    /** Neither telephone nor e-mail. */
    record NoWayToReach() implements CardSaid {}

    /** The telephone has an extension, which nobody can dial from here. */
    record ExtensionLeftOut(String extension) implements CardSaid {}

    /** The e-mail address is none. */
    record NoAddress(String address) implements CardSaid {}
}
