package cornerbook.app.book.bill;

import cornerbook.core.say.Price;
import cornerbook.core.say.Said;

/** What people are told when the book refuses a bill or a payment. */
sealed interface BillBookSaid extends Said {
    record NothingAgreed() implements BillBookSaid {}

    record NoLines() implements BillBookSaid {}

    /** A line that nobody agreed to, or that stands on another bill. */
    record NotAgreed(String words) implements BillBookSaid {}

    /** More than the place lets a bill go beyond what was agreed. */
    record BeyondAgreed(Price total, Price agreed, Price most, Said source) implements BillBookSaid {}

    record WordsTooLong(int most) implements BillBookSaid {}

    record NoSuchBill(int number) implements BillBookSaid {}

    record GivenBackAlready(int number) implements BillBookSaid {}

    record CreditOfCredit(int number) implements BillBookSaid {}

    /** More than is open, or nothing at all. */
    record PaymentOutOfRange(Price open) implements BillBookSaid {}
}
