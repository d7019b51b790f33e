package cornerbook.app.book.order;

import cornerbook.core.say.Said;

/** What people are told when the book refuses something of an order. */
sealed interface OrderBookSaid extends Said {
    /** Fewer than one piece, or more than anybody orders. */
    record QuantityOutOfRange(int least, int most) implements OrderBookSaid {}

    /** No car was judged to need it, and nobody ordered it before. */
    record NoSuchArticle() implements OrderBookSaid {}

    record NoSuchLine() implements OrderBookSaid {}

    /** More than were ordered and have neither come in nor been called off. */
    record MoreThanOpen(int open) implements OrderBookSaid {}

    /** More than have come in and went to no car. */
    record MoreThanInStock(int there) implements OrderBookSaid {}

    /** The car needs nothing of the kind. */
    record NotNeeded() implements OrderBookSaid {}

    record TextTooLong(int most) implements OrderBookSaid {}
}
