package cornerbook.app.book.customer;

import cornerbook.core.say.Said;

/** What people are told when the book refuses something of a customer. */
sealed interface CustomerBookSaid extends Said {
    /** The answer is to nothing. */
    record NothingAnswered() implements CustomerBookSaid {}

    /** It is not said what the person was asked, or at too great length. */
    record WordsMissing(int most) implements CustomerBookSaid {}

    /** There is no such customer, or the data were erased. */
    record NobodyToAsk() implements CustomerBookSaid {}
}
