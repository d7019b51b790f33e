package cornerbook.app.desk.out;

import cornerbook.core.say.Said;

/** What the page that takes the book out may have to say. */
sealed interface OutSaid extends Said {
    /** Nothing was made, or it was removed. */
    record NothingMade() implements OutSaid {}

    /** What to take out is not understood. */
    record NotUnderstood() implements OutSaid {}
}
