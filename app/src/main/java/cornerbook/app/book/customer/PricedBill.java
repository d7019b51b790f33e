package cornerbook.app.book.customer;

import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.bill.Payment;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a customer was charged, or given back, and paid.
 *
 * @param credits of a credit note the bill that it gives back; null for a bill
 * @param lines before taxes
 * @param total with taxes
 * @param why of a credit note; of a bill with nothing in it
 */
public record PricedBill(
        int number,
        @Nullable Integer credits,
        String visitId,
        LocalDate day,
        List<Line> lines,
        Money total,
        List<Paid> paid,
        Why why) {
    public PricedBill {
        lines = List.copyOf(lines);
        paid = List.copyOf(paid);
    }

    public record Line(String words, Money amount) {}

    public record Paid(LocalDate day, Payment.Way way, Money amount) {}

    /**
     * Why it gives back.
     *
     * @param reason as the book has it; empty for a bill
     * @param words beside it; may be empty
     */
    public record Why(String reason, String words) {
        public boolean given() {
            return !reason.isEmpty();
        }

        /** As a reader is told it. */
        public String say(Reader reader) {
            return CreditReason.find(reason).map(reader::say).orElse(reason);
        }
    }

    static PricedBill of(Bill bill) {
        return new PricedBill(
                bill.number(),
                bill.credits(),
                bill.visitId(),
                bill.day(),
                bill.lines().stream()
                        .map(line -> new Line(line.words(), line.amount()))
                        .toList(),
                bill.total().total(),
                bill.payments().stream()
                        .map(each -> new Paid(each.paidOn(), each.way(), each.amount()))
                        .toList(),
                new Why(bill.reason(), bill.words()));
    }
}
