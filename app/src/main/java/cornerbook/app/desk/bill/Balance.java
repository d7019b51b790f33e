package cornerbook.app.desk.bill;

import cornerbook.app.book.bill.Bill;
import cornerbook.core.price.Total;
import cornerbook.core.say.Price;
import cornerbook.words.Labels;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntFunction;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What is owed for a bill. A bill and the credit note that gives it back cancel out, so that what was never paid is neither asked for
 * nor given back.
 *
 * @param owed by the customer, below zero what goes back to the customer
 * @param ofBoth what is left of a bill and its credit note together; of the bill itself where it has none
 */
record Balance(Bill bill, Money owed, Money ofBoth) {
    /**
     * Of a bill or a credit note.
     *
     * @param find the bill of a number
     */
    static Balance of(Bill bill, IntFunction<Optional<Bill>> find) {
        if (bill.counts()) {
            return new Balance(bill, bill.open(), bill.open());
        }
        var other = find.apply(bill.isCredit() ? get(bill.credits()) : get(bill.creditedBy()));
        var both = other.map(each -> bill.open().plus(each.open())).orElseGet(bill::open);
        // What is left of the two is asked for on the bill, and given back on the credit note.
        return new Balance(bill, both.isNegative() == bill.isCredit() ? both : Money.zero(bill.currency()), both);
    }

    private static int get(@Nullable Integer number) {
        return Objects.requireNonNull(number);
    }

    boolean isNothing() {
        return owed.isZero();
    }

    /** One sentence. */
    String told(Labels w) {
        if (isNothing() && !ofBoth.isZero()) {
            return w.of("on-the-other", "credit", bill.isCredit());
        }
        if (isNothing()) {
            return w.of(bill.open().isZero() ? "all-paid" : "cancel-out");
        }
        var cash = new Price(Total.inCash(owed).abs());
        return owed.isNegative()
                ? w.of(
                        "to-give-back",
                        "amount",
                        back(),
                        "whole",
                        owed.equals(bill.total().total()),
                        "cash",
                        cash)
                : w.of("to-pay", "amount", new Price(owed), "cash", cash);
    }

    /** A few words, for a list. */
    String toldShort(Labels w) {
        return isNothing() ? w.of("all-paid") : w.of("open", "back", owed.isNegative(), "amount", back());
    }

    private Price back() {
        return new Price(owed.abs());
    }
}
