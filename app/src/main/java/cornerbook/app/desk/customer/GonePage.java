package cornerbook.app.desk.customer;

import cornerbook.app.book.customer.GoneCustomer;
import java.util.List;

/** Customers of whom the shop need not keep anything any longer. */
public record GonePage(Retention retention, List<GoneCustomer> customers) {
    public GonePage {
        customers = List.copyOf(customers);
    }
}
