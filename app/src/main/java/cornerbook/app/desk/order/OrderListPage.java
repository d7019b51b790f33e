package cornerbook.app.desk.order;

import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.order.OrderRow;
import cornerbook.core.order.OrderPart;
import java.time.LocalDate;
import java.util.List;

/** What to order, by part and article. */
public record OrderListPage(LocalDate today, Asked asked, OrderList list) {
    /** The chances that a person may choose from, per cent. */
    public List<String> levels() {
        return List.of("50", "80", "90", "95", "99");
    }

    /** The parts of which anything matters. */
    public List<OrderPart> parts() {
        return list.mattering().stream()
                .map(row -> row.article().part())
                .distinct()
                .toList();
    }

    public List<OrderRow> rows(OrderPart part) {
        return list.mattering().stream()
                .filter(row -> row.article().part() == part)
                .toList();
    }
}
