package cornerbook.app.book.customer;

import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.Payment;
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
 * @param reason of a credit note, else empty
 */
public record PricedBill(
        int number,
        @Nullable Integer credits,
        String visitId,
        LocalDate day,
        List<Line> lines,
        Money total,
        List<Paid> paid,
        String reason) {
    public PricedBill {
        lines = List.copyOf(lines);
        paid = List.copyOf(paid);
    }

    public record Line(String words, Money amount) {}

    public record Paid(LocalDate day, Payment.Way way, Money amount) {}

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
                bill.reason());
    }
}
