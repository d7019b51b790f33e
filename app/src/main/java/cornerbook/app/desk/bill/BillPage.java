package cornerbook.app.desk.bill;

import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.book.bill.Payment;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.TypedMoney;
import cornerbook.app.law.RepairLaw;
import cornerbook.app.request.Told;
import cornerbook.core.price.Beyond;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * The bills of a visit, and what may be billed.
 *
 * @param bills and credit notes, by number
 * @param open what was agreed and stands on no bill
 * @param free what was done without charge and stands on no bill
 * @param typed what was typed, when it came back
 * @param error why it came back; empty when it did not
 */
public record BillPage(
        LocalDate today,
        OpenVisit visit,
        WorkOfVisit work,
        List<Bill> bills,
        List<WorkOfVisit.Standing> open,
        List<BillLine> free,
        Form typed,
        String error) {
    private static final int MORE_LINES = 2;

    public BillPage {
        bills = List.copyOf(bills);
        open = List.copyOf(open);
        free = List.copyOf(free);
    }

    /** Work that was done and nobody agreed to: no bill takes it. */
    public @Nullable Said held() {
        var held = work.held(visit.visit());
        return held.isEmpty() ? null : Listed.commas(held);
    }

    public String newId() {
        return UUID.randomUUID().toString();
    }

    public List<Integer> more() {
        return IntStream.range(0, MORE_LINES).boxed().toList();
    }

    public List<Payment.Way> ways() {
        return List.of(Payment.Way.values());
    }

    public String say(Money money) {
        return Told.say(new Price(money));
    }

    /** What is still to be paid, as a field shows it; what goes back, above nothing. */
    public String toPay(Bill bill) {
        return TypedMoney.written(balance(bill).owed().abs());
    }

    /** Whether a payment is waited for, in either direction. */
    public boolean isOwed(Bill bill) {
        return !balance(bill).isNothing();
    }

    /** What is owed for it, one sentence. */
    public String owed(Bill bill) {
        return balance(bill).told(Told.labels("app/desk/bill"));
    }

    private Balance balance(Bill bill) {
        return Balance.of(bill, number -> Bill.find(bills, number));
    }

    /** The most that may be charged without another agreement; null before anything was agreed. */
    public @Nullable Price most() {
        return work.last()
                .filter(estimate -> !work.agreed().isEmpty())
                .map(estimate -> new Price(Beyond.most(
                        work.totalAgreed().orElseThrow().total(),
                        RepairLaw.of(estimate.place()).mostOverPercent())))
                .orElse(null);
    }
}
