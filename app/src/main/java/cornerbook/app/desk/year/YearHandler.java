package cornerbook.app.desk.year;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.year.MonthCount;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.request.Told;
import cornerbook.app.text.CsvLine;
import cornerbook.core.coming.Purpose;
import cornerbook.core.order.OrderPart;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Shows the year, and gives each of its lists as a file for a spreadsheet. */
public final class YearHandler {
    /** From a change-over to the next, and a month for who is late. Common practice, no source. */
    private static final int MONTHS_NOT_SEEN = 7;

    /** Of so many years pads are counted: as far back as winters are alike. Common practice, no source. */
    static final int YEARS_OF_PADS = 3;

    static final double LEVEL = 0.9;

    private final Desk desk;
    private final Pages pages;

    public YearHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "desk/year/year", year());
    }

    public void showPads(ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "desk/year/pads", pads());
    }

    /** Months, each a line. */
    public void sendMonths(ServerRequest request, ServerResponse response) {
        var labels = Told.labels("app/desk/year");
        var names = Stream.concat(
                        Stream.of("column-month", "column-visits", "column-agreed", "column-at-risk")
                                .map(labels::of),
                        Stream.of(CallAnswer.Kind.values()).map(YearPage::name))
                .toList();
        send(
                response,
                "year.csv",
                names,
                year().months().stream()
                        .map(line -> Stream.concat(
                                        Stream.of(
                                                line.month().toString(),
                                                whole(line.visits()),
                                                whole(line.agreed()),
                                                String.format(Locale.ROOT, "%.2f", line.setsAtRisk())),
                                        line.calls().stream().map(YearHandler::whole))
                                .toList())
                        .toList());
    }

    public void sendNotSeen(ServerRequest request, ServerResponse response) {
        var labels = Told.labels("app/desk/year");
        send(
                response,
                "cars-not-seen.csv",
                Stream.of("column-last-visit", "column-car", "column-plate", "column-customer", "column-telephone")
                        .map(labels::of)
                        .toList(),
                year().notSeen().stream()
                        .map(gone -> List.of(
                                gone.car().last().toString(),
                                gone.car().name(),
                                gone.car().plate(),
                                gone.car().customer(),
                                Objects.requireNonNullElse(gone.phone(), "")))
                        .toList());
    }

    public void sendDeclined(ServerRequest request, ServerResponse response) {
        var labels = Told.labels("app/desk/year");
        send(
                response,
                "work-declined.csv",
                Stream.of(
                                "column-declined-on",
                                "column-car",
                                "column-plate",
                                "column-work",
                                "column-safety",
                                "column-amount",
                                "column-currency")
                        .map(labels::of)
                        .toList(),
                year().declined().stream()
                        .map(each -> {
                            var line = each.line();
                            var amount = line.amount();
                            return List.of(
                                    each.day().toString(),
                                    line.carName(),
                                    line.plate(),
                                    line.words(),
                                    labels.of(line.safety() ? "yes" : "no"),
                                    amount == null ? "" : amount.getAmount().toPlainString(),
                                    amount == null
                                            ? ""
                                            : amount.getCurrencyUnit().getCode());
                        })
                        .toList());
    }

    public void sendPads(ServerRequest request, ServerResponse response) {
        var labels = Told.labels("app/desk/year");
        send(
                response,
                "pads.csv",
                Stream.of("column-month", "column-tried", "column-seized")
                        .map(labels::of)
                        .toList(),
                pads().months().stream()
                        .map(month -> List.of(
                                String.valueOf(month.month().getValue()),
                                String.valueOf(month.tried()),
                                String.valueOf(month.stuck())))
                        .toList());
    }

    private static void send(ServerResponse response, String name, List<String> names, List<List<String>> lines) {
        var csv =
                Stream.concat(Stream.of(names), lines.stream()).map(CsvLine::of).collect(Collectors.joining());
        response.header(HeaderNames.CONTENT_DISPOSITION, "attachment; filename=\"%s\"".formatted(name));
        Pages.sendPacked(response, "text/csv; charset=utf-8; header=present", csv.getBytes(UTF_8));
    }

    private YearPage year() {
        var book = desk.book();
        var today = desk.today();
        var shop = desk.clock().getZone();
        var reach = desk.reach();
        var first = YearMonth.from(today).minusMonths(YearPage.MONTHS).atDay(1);
        var last = YearMonth.from(today).plusMonths(YearPage.MONTHS).atEndOfMonth();
        var calls = new EnumMap<CallAnswer.Kind, List<MonthCount>>(CallAnswer.Kind.class);
        for (var answer : CallAnswer.Kind.values()) {
            calls.put(answer, book.year().calls(answer, first, today, shop));
        }
        var agreed = book.appointments().list(today, last).stream()
                .filter(appointment -> appointment.state().isOpen())
                .collect(Collectors.groupingBy(
                        appointment -> YearMonth.from(appointment.plan().day()), Collectors.counting()));
        var monthsAgreed = new ArrayList<MonthCount>();
        agreed.forEach((month, count) -> monthsAgreed.add(new MonthCount(month, count)));
        return new YearPage(
                today,
                book.year().visits(first, today),
                monthsAgreed,
                book.year().setsAtRisk(today, last),
                OrderList.of(book.orders(), today, last, LEVEL).mattering().stream()
                        .filter(row -> row.article().part() == OrderPart.TYRE)
                        .toList(),
                book.year().notSeen(today.minusMonths(MONTHS_NOT_SEEN)).stream()
                        .map(car -> new YearPage.NotSeen(car, reach.mayCall(car.customerId(), Purpose.SEASON)))
                        .toList(),
                calls,
                book.year().declined(first.atStartOfDay(shop).toInstant()).stream()
                        .map(line -> new YearPage.Declined(desk.dayOf(line.at()), line))
                        .toList());
    }

    private PadsPage pads() {
        var since = desk.today().minusYears(YEARS_OF_PADS);
        return new PadsPage(since, desk.book().year().pads(since));
    }

    private static String whole(double count) {
        return String.format(Locale.ROOT, "%.0f", count);
    }
}
