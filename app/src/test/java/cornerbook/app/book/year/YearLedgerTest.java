package cornerbook.app.book.year;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Learning;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.order.OrderPart;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the book counts of a year is what the cars themselves come to, counted another way. */
class YearLedgerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final List<CarHistory> CARS = DemoShop.histories(TODAY);

    @AutoClose
    private Book book;

    @BeforeEach
    void open(@TempDir Path folder) {
        book = EmptyBook.open(folder);
        book.records().addCars(CARS);
    }

    @Test
    void visitsAreThoseOfTheCars() {
        var first = LocalDate.of(2025, 11, 1);
        Map<YearMonth, Long> counted = visits().map(Visit::date)
                .filter(day -> !day.isBefore(first) && !day.isAfter(TODAY))
                .collect(Collectors.groupingBy(YearMonth::from, Collectors.counting()));
        assertThat(book.year().visits(first, TODAY))
                .hasSizeGreaterThan(1)
                .allSatisfy(month -> assertThat(month.count())
                        .isEqualTo(counted.getOrDefault(month.month(), 0L).doubleValue()))
                .extracting(MonthCount::month)
                .containsExactlyElementsOf(counted.keySet().stream().sorted().toList());
    }

    /** Of three lines one is declined; when it is agreed to after all, nothing is declined. */
    @Test
    void whatIsStillDeclinedOfEstimatesIsListed() {
        var visit = CARS.getFirst().visits().getLast().id();
        var amounts = Map.of("Discs", "200", "Pads", "100", "Wash", "20");
        assertThat(book.year().declined(NOW)).isEmpty();
        AgreedWork.answer(book, visit, "CA-QC", amounts, Set.of("Pads"), Set.of("Pads", "Discs"));
        assertThat(book.year().declined(NOW)).singleElement().satisfies(line -> {
            assertThat(line.visitId()).isEqualTo(visit);
            assertThat(line.words()).isEqualTo("Pads");
            assertThat(line.safety()).isTrue();
            assertThat(line.amount()).isEqualTo(Money.parse("CAD 100"));
            assertThat(line.plate()).isEqualTo(CARS.getFirst().vehicle().plate());
            assertThat(line.at()).isEqualTo(NOW);
        });
        assertThat(book.year().declined(NOW.plusSeconds(1))).isEmpty();
        AgreedWork.agree(book, visit, "CA-QC", amounts);
        assertThat(book.year().declined(NOW)).isEmpty();
    }

    /** At nine in the evening of 30 November in Montréal it is December in Greenwich. */
    @Test
    void aCallCountsInTheMonthOfTheShop() {
        var shop = ZoneId.of("America/Toronto");
        var evening = LocalDate.of(2026, 11, 30).atTime(21, 0).atZone(shop).toInstant();
        book.retorques()
                .answer(
                        "call",
                        book.retorques().listOpen().getFirst().visitId(),
                        new CallAnswer(CallAnswer.Kind.CALLED, "Ida", evening));
        var first = LocalDate.of(2026, 11, 1);
        assertThat(book.year().calls(CallAnswer.Kind.CALLED, first, LocalDate.of(2026, 11, 30), shop))
                .containsExactly(new MonthCount(YearMonth.of(2026, 11), 1));
        assertThat(book.year().calls(CallAnswer.Kind.CALLED, first, LocalDate.of(2026, 12, 31), ZoneOffset.UTC))
                .containsExactly(new MonthCount(YearMonth.of(2026, 12), 1));
    }

    /** A reading that was put right counts as it was put right, in the month of the visit. */
    @Test
    void padsAreThoseThatStand() {
        var visit = visits().filter(each -> new StandingReadings(each)
                        .all(Measure.PAD_MOVEMENT).stream()
                                .anyMatch(reading -> reading.asWritten().equals("free")))
                .max(Comparator.comparing(Visit::date))
                .orElseThrow();
        var month = visit.date().getMonth();
        var before = pads(month);
        var wrong = new StandingReadings(visit)
                .all(Measure.PAD_MOVEMENT).stream()
                        .filter(reading -> reading.asWritten().equals("free"))
                        .findFirst()
                        .orElseThrow();
        book.readings()
                .add(
                        visit.id(),
                        List.of(new Reading(
                                "right",
                                wrong.measure(),
                                wrong.corner(),
                                wrong.wheelTag(),
                                wrong.spot(),
                                2,
                                "seized",
                                wrong.id(),
                                "typed wrong")));
        assertThat(pads(month).tried()).isEqualTo(before.tried());
        assertThat(pads(month).stuck()).isEqualTo(before.stuck() + 1);
        var tried = visits().filter(each -> each.date().getMonth() == month)
                .mapToInt(each ->
                        new StandingReadings(each).all(Measure.PAD_MOVEMENT).size())
                .sum();
        assertThat(before.tried()).as("of all the years").isEqualTo(tried);
    }

    @Test
    void setsAtRiskAreWhatTheOrderListExpects() {
        var clock = Clock.fixed(NOW, ZoneOffset.UTC);
        new CarLists(book, new Learning(book, new Assessor(LimitsFile.load()), clock), clock).judgeOld();
        var last = TODAY.plusYears(1);
        double expected = book.orders().listNeeds(TODAY, last).stream()
                .filter(need -> need.need().article().part() == OrderPart.TYRE)
                .mapToDouble(need -> need.need().need().any())
                .sum();
        assertThat(book.year().setsAtRisk(TODAY, last).stream()
                        .mapToDouble(MonthCount::count)
                        .sum())
                .isCloseTo(expected, within(1e-9))
                .isPositive();
    }

    @Test
    void aCarIsNotSeenFromTheDayAfterItsLastVisitOn() {
        var car = CARS.stream()
                .filter(each -> !each.visits().isEmpty())
                .findFirst()
                .orElseThrow();
        var last = car.visits().getLast().date();
        assertThat(book.year().notSeen(last))
                .noneMatch(each -> each.vehicleId().equals(car.vehicle().id()));
        assertThat(book.year().notSeen(last.plusDays(1)))
                .filteredOn(each -> each.vehicleId().equals(car.vehicle().id()))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.last()).isEqualTo(last);
                    assertThat(each.customer()).isEqualTo(car.customer().name());
                });
    }

    private PadsOfMonth pads(Month month) {
        return book.year().pads(LocalDate.of(2000, 1, 1)).stream()
                .filter(each -> each.month() == month)
                .findFirst()
                .orElseThrow();
    }

    private static Stream<Visit> visits() {
        return CARS.stream().flatMap(car -> car.visits().stream());
    }
}
