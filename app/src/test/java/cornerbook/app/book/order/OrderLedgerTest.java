package cornerbook.app.book.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.order.OrderLedger.Event;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Learning;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.order.Article;
import cornerbook.core.order.OrderPart;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cars of the invented shop, what they need, and what is ordered for them. */
class OrderLedgerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");

    private static final Article TYRES = new Article(OrderPart.TYRE, "SUMMER", "235/50R19");

    @AutoClose
    private Book book;

    private Path folder;

    @BeforeEach
    void judgeTheShop(@TempDir Path folder) {
        this.folder = folder;
        book = EmptyBook.open(folder);
        book.records().addCars(DemoShop.histories(TODAY));
        var clock = Clock.fixed(NOW, ZoneOffset.UTC);
        new CarLists(book, new Learning(book, new Assessor(LimitsFile.load()), clock), clock).judgeOld();
    }

    private OrderRow tyres() {
        return OrderList.of(book.orders(), TODAY, OrderList.usualUntil(TODAY, Optional.empty()), 0.5)
                .find(TYRES)
                .orElseThrow();
    }

    private String likeliest() {
        return tyres().cars().getFirst().visitId();
    }

    /** A set below its minimum: four tyres for certain; beside it a car that may need four. */
    @Test
    void whatIsNeededIsOrderedComesInAndGoesToItsCar() {
        double before = tyres().demand().mean();
        assertThat(tyres().toOrder()).isEqualTo(4);
        assertThat(book.orders().order("line", TYRES, 6, "Invented supplier", "Ida", NOW))
                .isEqualTo(Arrival.STORED);
        assertThat(book.orders().order("line", TYRES, 6, "Invented supplier", "Ida", NOW))
                .as("sent twice")
                .isEqualTo(Arrival.ALREADY);
        assertThat(tyres().open()).isEqualTo(6);
        assertThat(tyres().toOrder()).isZero();
        book.orders().record("in", "line", Event.CAME_IN, 4, "Ida", NOW);
        book.orders().record("off", "line", Event.CALLED_OFF, 2, "Ida", NOW);
        assertThat(tyres().open()).isZero();
        assertThat(tyres().there()).isEqualTo(4);
        var visitId = likeliest();
        assertThat(book.orders().give("give", TYRES, visitId, 4, "Ida", NOW)).isEqualTo(Arrival.STORED);
        assertThat(book.orders().give("give", TYRES, visitId, 4, "Ida", NOW)).isEqualTo(Arrival.ALREADY);
        assertThat(tyres().there()).isZero();
        assertThat(tyres().demand().mean()).as("the car has its tyres").isLessThan(before - 3);
        assertThat(tyres().toOrder()).isZero();
        assertThat(book.orders().listLines())
                .singleElement()
                .satisfies(line -> assertThat(line.became()).isEqualTo(new OrderLine.Became(4, 2, 4)));
        assertThat(book.check()).isEmpty();
    }

    /** What was ordered first is given first, over two lines where one has not enough. */
    @Test
    void piecesOfTwoLinesGoTogether() {
        for (var line : List.of("a", "b")) {
            book.orders().order(line, TYRES, 2, "", "", NOW);
            book.orders().record("in-" + line, line, Event.CAME_IN, 2, "", NOW);
        }
        book.orders().give("give", TYRES, likeliest(), 4, "", NOW);
        assertThat(book.orders().listLines())
                .allSatisfy(line -> assertThat(line.there()).isZero());
    }

    @Test
    void whatCannotBeChangesNothing() {
        book.orders().order("line", TYRES, 2, "", "", NOW);
        var visitId = likeliest();
        refused(() -> book.orders().record("x", "line", Event.CAME_IN, 3, "", NOW), "2 pieces are still to come");
        refused(() -> book.orders().record("x", "nothing", Event.CAME_IN, 1, "", NOW), "no such line");
        refused(() -> book.orders().give("x", TYRES, visitId, 1, "", NOW), "no piece of it lies in the shop");
        refused(() -> book.orders().give("x", TYRES, "no-visit", 1, "", NOW), "needs nothing of the kind");
        refused(() -> book.orders().order("x", TYRES, 0, "", "", NOW), "whole number from 1 to");
        refused(() -> book.orders().order("x", TYRES, 1, "n".repeat(201), "", NOW), "longer than 200");
        var unknown = new Article(OrderPart.TYRE, "SUMMER", "1/1R1");
        refused(() -> book.orders().order("x", unknown, 1, "", "", NOW), "no car needs such an article");
        assertThat(book.orders().listLines())
                .singleElement()
                .satisfies(line -> assertThat(line.became()).isEqualTo(new OrderLine.Became(0, 0, 0)));
    }

    private static void refused(ThrowingCallable work, String sentence) {
        assertThatThrownBy(work).extracting(InEnglish::told, STRING).contains(sentence);
    }

    /** Whoever does not want it needs nothing; who and when is kept, and what was said before stays. */
    @Test
    void declinedCountsNoLonger() {
        var visitId = likeliest();
        double before = tyres().demand().mean();
        answer("a", visitId, CallAnswer.Kind.CALLED);
        assertThat(tyres().demand().mean()).isEqualTo(before);
        answer("b", visitId, CallAnswer.Kind.DECLINED);
        assertThat(tyres().demand().mean()).isLessThan(before - 3);
        assertThat(tyres().cars().getFirst().contact().last())
                .isEqualTo(new CallAnswer(CallAnswer.Kind.DECLINED, "Ida", NOW));
        answer("c", visitId, CallAnswer.Kind.WILL_COME);
        assertThat(tyres().demand().mean()).as("thought better of it").isEqualTo(before);
        refused(
                () -> book.orders()
                        .answer("d", "no-visit", OrderPart.TYRE, new CallAnswer(CallAnswer.Kind.CALLED, "", NOW)),
                "needs nothing of the kind");
    }

    private void answer(String id, String visitId, CallAnswer.Kind kind) {
        book.orders().answer(id, visitId, OrderPart.TYRE, new CallAnswer(kind, "Ida", NOW));
    }

    /** The database itself refuses what would change an order. */
    @Test
    void ordersStay() {
        book.orders().order("line", TYRES, 2, "", "", NOW);
        book.close();
        var jdbi = Jdbi.create("jdbc:sqlite:" + folder.resolve("book.sqlite"));
        for (var change : List.of("delete from order_line", "update order_line set quantity = 1")) {
            assertThatThrownBy(() -> jdbi.useHandle(handle -> handle.execute(change)))
                    .hasStackTraceContaining("an order line is never");
        }
    }

    /** Spring and autumn lie half a year apart; a change-over at work is not ordered for. */
    @Test
    void theComingChangeOverIsMeant() {
        assertThat(OrderList.usualUntil(TODAY, Optional.empty())).isEqualTo(LocalDate.of(2027, 5, 15));
        assertThat(OrderList.usualUntil(LocalDate.of(2027, 4, 1), Optional.empty()))
                .isEqualTo(LocalDate.of(2027, 11, 19));
        assertThat(OrderList.usualUntil(LocalDate.of(2027, 7, 1), Optional.empty()))
                .isEqualTo(LocalDate.of(2027, 11, 19));
    }
}
