package cornerbook.app.book.bill;

import cornerbook.app.book.estimate.Estimate;
import cornerbook.core.price.Total;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A bill, or a credit note that gives one back.
 *
 * @param number 1 for the first of the shop
 * @param credits the bill that it gives back; null for a bill
 * @param creditedBy the credit note that gives it back; null while there is none
 * @param taxes as they were on its day
 * @param total what its lines come to, as it was kept
 * @param reason of a credit note: a name of {@link CreditReason}, or the words of a note that was made before there was a list; else empty
 * @param words beside the reason, which stand on no paper; else empty
 */
public record Bill(
        int number,
        String id,
        @Nullable Integer credits,
        @Nullable Integer creditedBy,
        String visitId,
        Language language,
        LocalDate day,
        String place,
        CurrencyUnit currency,
        List<BillLine> lines,
        List<Estimate.Named> taxes,
        Total total,
        List<Payment> payments,
        String reason,
        String words,
        String person,
        Instant madeAt) {
    public Bill {
        lines = List.copyOf(lines);
        taxes = List.copyOf(taxes);
        payments = List.copyOf(payments);
    }

    /** Why it gives back, as a reader is told it. */
    public String why(Reader reader) {
        return CreditReason.find(reason).map(reader::say).orElse(reason);
    }

    public boolean isCredit() {
        return credits != null;
    }

    /** Whether it counts: it is a bill, and nothing gave it back. */
    public boolean counts() {
        return credits == null && creditedBy == null;
    }

    /** The one of these that has the number. */
    public static Optional<Bill> find(List<Bill> bills, int number) {
        return bills.stream().filter(each -> each.number() == number).findFirst();
    }

    /** What is still to be paid; nothing where what is missing is only what cash cannot pay. */
    public Money open() {
        var open = total.total().minus(paid());
        boolean inCash = payments.stream().anyMatch(each -> each.way() == Payment.Way.CASH);
        return inCash && Total.inCash(open).isZero() ? Money.zero(currency) : open;
    }

    private Money paid() {
        return Money.total(currency, payments.stream().map(Payment::amount).toList());
    }
}
