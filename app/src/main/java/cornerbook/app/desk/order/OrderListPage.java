package cornerbook.app.desk.order;

import cornerbook.app.book.order.NeedOfCar;
import cornerbook.app.book.order.OrderLevel;
import cornerbook.app.book.order.OrderLine;
import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.order.OrderRow;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.order.OrderPart;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * What to order, by part and article.
 *
 * @param kept with which chance the shop has pieces be enough
 * @param shop the time by which days are told
 * @param letterhead who orders, for who sells the pieces
 */
public record OrderListPage(
        LocalDate today, Asked asked, OrderList list, OrderLevel kept, ZoneId shop, Letterhead letterhead) {
    /** What was ordered at once, of which pieces are still to come. */
    public record ToCome(OrderRow row, OrderLine line) {}

    /** What is still to come, ordered first before the rest. */
    public List<ToCome> toCome() {
        return list.rows().stream()
                .flatMap(row ->
                        row.lines().stream().filter(line -> line.open() > 0).map(line -> new ToCome(row, line)))
                .sorted(Comparator.comparing(each -> each.line().madeAt()))
                .toList();
    }

    /** The cars behind a row that may well need it, by the day on which they are due. */
    public SortedMap<LocalDate, List<NeedOfCar>> likelyByDay(OrderRow row) {
        return row.likely().stream()
                .collect(Collectors.groupingBy(car -> car.need().due(), TreeMap::new, Collectors.toList()));
    }

    public LocalDate dayOf(Instant moment) {
        return LocalDate.ofInstant(moment, shop);
    }

    /** Whether the list shows the chance that the shop keeps. */
    public boolean isKept() {
        return asked.toKeep().equals(kept);
    }

    public String newId() {
        return UUID.randomUUID().toString();
    }

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
