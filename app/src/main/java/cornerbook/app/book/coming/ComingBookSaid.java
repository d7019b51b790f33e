package cornerbook.app.book.coming;

import cornerbook.core.say.Said;

/** What people are told when the book refuses something of a customer who is asked to come back. */
sealed interface ComingBookSaid extends Said {
    /** The car is to come back for no such thing. */
    record NotDue() implements ComingBookSaid {}

    /** Nothing was chosen of what the customer was asked. */
    record NothingChosen() implements ComingBookSaid {}
}
