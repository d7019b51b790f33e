package cornerbook.app.desk.year;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.year.VisitOfYear;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.desk.year.BehindPage.Cell;
import cornerbook.app.desk.year.BehindPage.Column;
import cornerbook.app.desk.year.BehindPage.Line;
import cornerbook.app.request.Told;
import cornerbook.app.text.CsvLine;
import cornerbook.core.coming.Matter;
import cornerbook.core.order.OrderPart;
import cornerbook.core.reread.ReadTwice;
import cornerbook.core.say.Said;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Shows each list behind a picture of the year, and gives it as a file for spreadsheets. */
public final class BehindHandler {
    private static final double PERCENT = 100;

    /** Heads of columns of numbers. */
    private static final Set<String> NUMBERS = Set.of(
            "column-likely",
            "column-cars",
            "column-expected",
            "column-seized",
            "column-tried",
            "column-grooves",
            "column-apart");

    private final Desk desk;
    private final Pages pages;

    public BehindHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(Behind behind, ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "desk/year/behind", page(behind));
    }

    public void sendCsv(Behind behind, ServerRequest request, ServerResponse response) {
        var page = page(behind);
        var names = page.columns().stream().map(Column::said).toList();
        var csv = Stream.concat(
                        Stream.of(names),
                        page.lines().stream()
                                .map(line ->
                                        line.cells().stream().map(Cell::written).toList()))
                .map(CsvLine::of)
                .collect(Collectors.joining());
        response.header(HeaderNames.CONTENT_DISPOSITION, "attachment; filename=\"%s.csv\"".formatted(behind.address()));
        Pages.sendPacked(response, "text/csv; charset=utf-8; header=present", csv.getBytes(UTF_8));
    }

    private BehindPage page(Behind behind) {
        return switch (behind) {
            case VISITS ->
                of(behind, visits(), "column-car", "column-plate", "column-customer", "column-day", "column-visit");
            case SETS ->
                of(
                        behind,
                        sets(),
                        "column-car",
                        "column-plate",
                        "column-customer",
                        "column-day",
                        "column-article",
                        "column-likely");
            case TYRES -> of(behind, tyres(), "column-article", "column-cars", "column-expected");
            case CALLS ->
                of(
                        behind,
                        calls(),
                        "column-car",
                        "column-plate",
                        "column-customer",
                        "column-day",
                        "column-about",
                        "column-answer");
            case SEIZED ->
                of(
                        behind,
                        seized(),
                        "column-car",
                        "column-plate",
                        "column-customer",
                        "column-day",
                        "column-corner",
                        "column-seized",
                        "column-tried");
            case READ_TWICE ->
                of(behind, readTwice(), "column-first", "column-second", "column-grooves", "column-apart");
        };
    }

    private static BehindPage of(Behind behind, List<Line> lines, String... labels) {
        var words = Told.labels("app/desk/year");
        return new BehindPage(
                behind,
                Arrays.stream(labels)
                        .map(label -> new Column(words.of(label), NUMBERS.contains(label)))
                        .toList(),
                lines);
    }

    private static Line line(VisitOfYear visit, String link, Cell... more) {
        return line(visit.car(), visit.plate(), visit.customer(), visit.day(), link, more);
    }

    private static Line line(String car, String plate, String customer, LocalDate day, String link, Cell... more) {
        return new Line(
                Stream.concat(Stream.of(Cell.of(car), Cell.of(plate), Cell.of(customer), Cell.of(day)), Stream.of(more))
                        .toList(),
                link);
    }

    private LocalDate first() {
        return YearMonth.from(desk.today()).minusMonths(YearPage.MONTHS).atDay(1);
    }

    private LocalDate last() {
        return YearMonth.from(desk.today()).plusMonths(YearPage.MONTHS).atEndOfMonth();
    }

    /** Days that are agreed first, the furthest first, then the visits that were. */
    private List<Line> visits() {
        var words = Told.labels("app/desk/year");
        var agreed = desk.book().appointments().list(desk.today(), last()).stream()
                .filter(each -> each.state().isOpen())
                .map(each -> line(
                        each.car().name(),
                        each.car().plate(),
                        each.car().customerName(),
                        each.plan().day(),
                        DayLinks.appointment(each.id()),
                        Cell.of(words.of("is-agreed"))))
                .toList();
        return Stream.concat(
                        agreed.reversed().stream(),
                        desk.book().year().listVisits(first(), desk.today()).stream()
                                .map(visit ->
                                        line(visit, VisitLinks.visit(visit.visitId()), Cell.of(words.of("was-here")))))
                .toList();
    }

    private List<Line> sets() {
        return desk.book().orders().listNeeds(desk.today(), last()).stream()
                .filter(need -> need.need().article().part() == OrderPart.TYRE)
                .sorted(Comparator.comparing(need -> -need.need().need().any()))
                .map(need -> line(
                        need.vehicleName(),
                        need.plate(),
                        need.contact().customerName(),
                        need.need().due(),
                        VisitLinks.findings(need.visitId()),
                        Cell.of(need.need().article().said()),
                        Cell.of(PERCENT * need.need().need().any(), 0)))
                .toList();
    }

    private List<Line> tyres() {
        return OrderList.of(desk.book().orders(), desk.today(), last(), YearHandler.LEVEL).mattering().stream()
                .filter(row -> row.article().part() == OrderPart.TYRE)
                .map(row -> new Line(
                        List.of(
                                new Cell(
                                        Told.begin(row.article().said()),
                                        Told.say(row.article().said())),
                                Cell.of(row.count()),
                                Cell.of(row.demand().mean(), 1)),
                        ShopLinks.article(row.article()) + "&until=" + last()))
                .toList();
    }

    private List<Line> calls() {
        return desk.book().year().listCalls(first(), desk.today(), desk.clock().getZone()).stream()
                .map(call -> line(
                        call.visit(),
                        CarLinks.car(call.visit().vehicleId()),
                        Cell.of(about(call.about())),
                        Cell.of(YearPage.name(call.answer()))))
                .toList();
    }

    private static Said about(String name) {
        return Stream.<Enum<? extends Said>>concat(Arrays.stream(Matter.values()), Arrays.stream(OrderPart.values()))
                .filter(each -> each.name().equals(name))
                .map(Said.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private List<Line> seized() {
        return desk.book().year().listSeized(desk.today().minusYears(YearHandler.YEARS_OF_PADS)).stream()
                .map(pads -> line(
                        pads.visit(),
                        VisitLinks.visit(pads.visit().visitId()),
                        Cell.of(pads.corner()),
                        Cell.of(pads.seized()),
                        Cell.of(pads.tried())))
                .toList();
    }

    private List<Line> readTwice() {
        return desk.book().knowledge().readTwice().stream()
                .map(BehindHandler::line)
                .toList();
    }

    private static Line line(ReadTwice twice) {
        return new Line(
                List.of(
                        Cell.of(twice.first()),
                        Cell.of(twice.second()),
                        Cell.of(twice.differencesMm().size()),
                        Cell.of(twice.meanMm(), 2)),
                null);
    }
}
