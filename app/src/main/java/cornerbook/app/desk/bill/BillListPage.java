package cornerbook.app.desk.bill;

import cornerbook.app.book.bill.Bill;
import cornerbook.app.request.Told;
import cornerbook.core.say.Price;
import java.util.List;
import org.joda.money.Money;

/** The latest bills and credit notes of the shop, the last one first. */
public record BillListPage(List<Bill> bills) {
    public BillListPage {
        bills = List.copyOf(bills);
    }

    /** Whether a payment is waited for, in either direction. */
    public boolean isOwed(Bill bill) {
        return !balance(bill).isNothing();
    }

    /** What is owed for it, in a few words. */
    public String owed(Bill bill) {
        return balance(bill).toldShort(Told.labels("app/desk/bill"));
    }

    private Balance balance(Bill bill) {
        return Balance.of(bill, number -> Bill.find(bills, number));
    }

    public String say(Money money) {
        return Told.say(new Price(money));
    }
}
