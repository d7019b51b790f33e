package cornerbook.app.book.order;

import cornerbook.core.changeover.ChangeOverOfPlace;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.order.Article;
import cornerbook.core.season.ChangeOver;
import cornerbook.core.season.Climate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What to order for the cars that are due, an article a row.
 *
 * @param from first day on which a car is due that counts: one that did not come may still come
 * @param until last such day
 * @param level chance with which the pieces of each row are to be enough, 0 to 1
 * @param notJudged how many cars of the book are not judged as they are now
 */
public record OrderList(LocalDate from, LocalDate until, double level, int notJudged, List<OrderRow> rows) {
    /** A car that is overdue by more comes for another season, or not at all. Common practice, no source. */
    private static final int DAYS_OVERDUE = 120;

    /** A change-over that is so near is being worked on; the shop orders for the one after it. Common practice, no source. */
    private static final int DAYS_AT_WORK = 30;

    public OrderList {
        rows = List.copyOf(rows);
    }

    /** The first day on which a car is due that counts: one that did not come may still come. */
    public static LocalDate usualFrom(LocalDate today) {
        return today.minusDays(DAYS_OVERDUE);
    }

    /** The last day that is asked for when nobody names one: a month after the day of the coming change-over of the place. */
    public static LocalDate usualUntil(LocalDate today, Optional<Climate> climate) {
        var changeOver = climate.map(ChangeOverOfPlace::new)
                .map(place -> place.under(Optional.empty()))
                .orElse(ChangeOver.USUAL);
        var spring = changeOver.after(today.plusDays(DAYS_AT_WORK), SeasonKind.WINTER);
        var autumn = changeOver.after(today.plusDays(DAYS_AT_WORK), SeasonKind.SUMMER);
        return (spring.isBefore(autumn) ? spring : autumn).plusDays(DAYS_AT_WORK);
    }

    /** The list of a day, by what the book has now. */
    public static OrderList of(OrderLedger ledger, LocalDate today, LocalDate until, double level) {
        var from = usualFrom(today);
        return new OrderList(
                from,
                until,
                level,
                ledger.countNotJudged(),
                rows(ledger.listNeeds(from, until), ledger.listLines(), level));
    }

    private static List<OrderRow> rows(List<NeedOfCar> needs, List<OrderLine> lines, double level) {
        var cars = new LinkedHashMap<Article, List<NeedOfCar>>();
        needs.forEach(need -> cars.computeIfAbsent(need.need().article(), article -> new ArrayList<>())
                .add(need));
        Map<Article, List<OrderLine>> ordered = new LinkedHashMap<>();
        lines.forEach(line -> {
            cars.computeIfAbsent(line.article(), article -> new ArrayList<>());
            ordered.computeIfAbsent(line.article(), article -> new ArrayList<>())
                    .add(line);
        });
        return cars.entrySet().stream()
                .map(each -> OrderRow.of(
                        each.getKey(), each.getValue(), ordered.getOrDefault(each.getKey(), List.of()), level))
                .sorted(Comparator.comparing((OrderRow row) -> row.article().part())
                        .thenComparing(row -> row.article().text())
                        .thenComparing(
                                row -> Optional.ofNullable(row.article().kind()).orElse("")))
                .toList();
    }

    /** The rows of what is to be ordered, comes, or lies there. */
    public List<OrderRow> mattering() {
        return rows.stream().filter(OrderRow::matters).toList();
    }

    /** The others: of them the chosen level asks for none. */
    public List<OrderRow> others() {
        return rows.stream().filter(row -> !row.matters()).toList();
    }

    /** The row of an article; empty when no car may need it and none was ordered. */
    public Optional<OrderRow> find(Article article) {
        return rows.stream().filter(row -> row.article().equals(article)).findFirst();
    }
}
