package cornerbook.app.book.price;

import cornerbook.core.say.Said;

/** What people are told when the book refuses a price. */
sealed interface PriceBookSaid extends Said {
    /** The name of a part, an offer, a tax or a registration. */
    record NameTooLong(int most) implements PriceBookSaid {}

    record NameMissing() implements PriceBookSaid {}

    /** Below nothing, or more than anybody pays for one thing. */
    record PriceOutOfRange(int most) implements PriceBookSaid {}

    record MinutesOutOfRange(int most) implements PriceBookSaid {}

    record TreadOutOfRange(int least, int most) implements PriceBookSaid {}

    /** Before anything has a price, the shop says where it is. */
    record NoPlaceYet() implements PriceBookSaid {}

    /** A price in another coin than the one of the place. */
    record OtherCurrency(String expected) implements PriceBookSaid {}

    record NoPlace() implements PriceBookSaid {}
}
