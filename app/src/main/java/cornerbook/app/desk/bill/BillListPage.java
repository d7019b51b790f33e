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

    public String say(Money money) {
        return Told.say(new Price(money));
    }
}
