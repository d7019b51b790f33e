package cornerbook.app.desk.order;

import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.order.OrderRow;
import cornerbook.app.text.CsvLine;
import cornerbook.words.Reader;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The order list as comma-separated values (RFC 4180): a line of names, then a line for each article that matters. */
public final class OrderCsv {
    private OrderCsv() {}

    /** Numbers have a decimal point, in any language: the comma parts the fields. */
    public static String of(OrderList list, Reader reader) {
        var labels = reader.labels("app/desk/order");
        var names = List.of(
                labels.of("column-part"),
                labels.of("column-article"),
                labels.of("column-cars"),
                labels.of("column-expected"),
                labels.of("column-to-have"),
                labels.of("column-on-order"),
                labels.of("column-in-shop"),
                labels.of("column-to-order"));
        return Stream.concat(Stream.of(names), list.mattering().stream().map(row -> fields(row, reader)))
                .map(CsvLine::of)
                .collect(Collectors.joining());
    }

    private static List<String> fields(OrderRow row, Reader reader) {
        return List.of(
                reader.say(row.article().part()),
                reader.say(row.article().said()),
                String.valueOf(row.count()),
                String.format(Locale.ROOT, "%.1f", row.demand().mean()),
                String.valueOf(row.toHave()),
                String.valueOf(row.open()),
                String.valueOf(row.there()),
                String.valueOf(row.toOrder()));
    }
}
