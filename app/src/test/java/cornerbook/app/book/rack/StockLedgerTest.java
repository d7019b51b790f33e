package cornerbook.app.book.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.Rack;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where sets of the invented shop lie. On 25 November 2026 car 03 has left on its winter set; car 08 is here, on its summer set. */
class StockLedgerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final By NOW = new By("Ida", Instant.parse("2026-11-25T14:00:00Z"));

    @AutoClose
    private Book book;

    private Path folder;

    @BeforeEach
    void open(@TempDir Path folder) {
        this.folder = folder;
        book = EmptyBook.open(folder);
        book.records().addCars(DemoShop.histories(TODAY));
    }

    private static Rack rack(String pattern, int places, int capacity) {
        return new Rack("Cellar", new Naming(pattern, 1, places), new FloorPoint(2, 1), Rack.Along.INWARD, 1, capacity);
    }

    private KeptSet set(String tag) {
        return book.stock().find(tag).orElseThrow();
    }

    private static void refused(String sentence, ThrowingCallable call) {
        assertThatThrownBy(call).extracting(InEnglish::told, STRING).contains(sentence);
    }

    /** At eight in the evening of the 25th in Montréal it is the 26th in Greenwich. */
    @Test
    void whatIsLaidDownInTheEveningLiesThereSinceThatDayOfTheShop() {
        var shop = ZoneId.of("America/Toronto");
        var evening = TODAY.atTime(20, 0).atZone(shop).toInstant();
        assertThat(LocalDate.ofInstant(evening, ZoneOffset.UTC)).isAfter(TODAY);
        book.racks().name("rack", rack("K-##", 4, 1), NOW);
        var days = LocalDate.of(2026, 11, 24);
        book.stock().put("before", "03S1", "K-01", new By("Ida", evening), TODAY);
        assertThat(set("03S1").since(shop)).contains(TODAY);
        assertThat(set("03S1").since(ZoneOffset.UTC))
                .as("wherever it is asked from")
                .contains(TODAY);
        assertThat(book.stock().listMoves(set("03S1").key()))
                .extracting(move -> move.day(ZoneOffset.UTC))
                .containsExactly(TODAY);

        // The car comes on the next day on these wheels: they were not put away after it came.
        book.stock().put("evening before", "08S1", "K-02", new By("Ida", evening.minus(Duration.ofDays(1))), days);
        assertThat(set("08S1").ran().on())
                .as("in Greenwich it was the day of its visit already")
                .isEqualTo(KeptSet.On.CAME);
    }

    @Test
    void aSetIsLaidMovedAndHandedOutAndEachIsKept() {
        book.racks().name("rack", rack("K-##", 4, 1), NOW);
        assertThat(book.racks().name("rack", rack("K-##", 4, 1), NOW)).isEqualTo(Arrival.ALREADY);
        assertThat(set("03S1").place()).isEqualTo("Rack S, bay 3");

        assertThat(book.stock().put("a", "03S1", "k-02 ", NOW, TODAY)).isEqualTo(Arrival.STORED);
        assertThat(book.stock().put("a", "03S1", "k-02 ", NOW, TODAY)).isEqualTo(Arrival.ALREADY);
        assertThat(set("03S4").place()).as("as the label has it").isEqualTo("K-02");
        assertThat(book.cars()
                        .find("demo-03")
                        .orElseThrow()
                        .findSetOf("03S1")
                        .orElseThrow()
                        .storePlace())
                .as("what every other page says")
                .isEqualTo("K-02");
        assertThat(book.cars().listWheelChanges("demo-03").getLast().before()).isEqualTo("Rack S, bay 3");

        book.stock().put("b", "03S2", "K-03", NOW, TODAY);
        book.stock().handOut("c", "03S3", NOW, TODAY);
        assertThat(set("03S1").isOut()).isTrue();
        assertThat(set("03S1").lies()).isFalse();
        assertThat(book.stock().listMoves(set("03S1").key()))
                .extracting(SetMove::kind, SetMove::from, SetMove::to)
                .containsExactly(
                        tuple(SetMove.Kind.OUT_TO_CUSTOMER, "K-03", null),
                        tuple(SetMove.Kind.PUT, "K-02", "K-03"),
                        tuple(SetMove.Kind.PUT, "Rack S, bay 3", "K-02"));
        assertThat(set("03S1").since(ZoneOffset.UTC)).contains(TODAY);
        assertThat(book.check()).isEmpty();
    }

    @Test
    void nothingGoesToTheWrongCarOrToAFullPlace() {
        book.racks().name("rack", rack("K-##", 2, 1), NOW);
        book.stock().put("a", "03S1", "K-01", NOW, TODAY);
        refused("K-01” is full", () -> book.stock().put("b", "04S1", "K-01", NOW, TODAY));
        refused("lies at “K-01” already", () -> book.stock().put("b", "03S1", "K-01", NOW, TODAY));
        refused("no place “K-09”", () -> book.stock().put("b", "03S1", "K-09", NOW, TODAY));
        refused("no wheel of the book", () -> book.stock().put("b", "nothing", "K-02", NOW, TODAY));
        refused("on the car", () -> book.stock().put("b", "03W1", "K-02", NOW, TODAY));

        refused("belongs to", () -> book.stock().takeToCar("c", "03S1", "demo-08-v7", NOW, TODAY));
        refused("this visit is no more", () -> book.stock().takeToCar("c", "03S1", "nothing", NOW, TODAY));
        assertThat(set("03S1").place()).as("it stays").isEqualTo("K-01");
        assertThat(book.stock().listMoves(set("03S1").key())).hasSize(1);

        assertThat(book.stock().takeToCar("d", "08W1", "demo-08-v7", NOW, TODAY))
                .isEqualTo(Arrival.STORED);
        assertThat(set("08W1").isOut()).isTrue();
    }

    /** Whoever carries the four wheels scans each of them: the set went out once, and where it lay is still known. */
    @Test
    void aSetOfWhichEachWheelIsScannedGoesOutOnce() {
        book.racks().name("rack", rack("K-##", 2, 1), NOW);
        book.stock().put("a", "08W1", "K-01", NOW, TODAY);
        assertThat(book.stock().takeToCar("b", "08W1", "demo-08-v7", NOW, TODAY))
                .isEqualTo(Arrival.STORED);
        assertThat(book.stock().takeToCar("c", "08W2", "demo-08-v7", NOW, TODAY))
                .isEqualTo(Arrival.ALREADY);
        assertThat(book.stock().listMoves(set("08W1").key()))
                .extracting(SetMove::kind, SetMove::from)
                .containsExactly(tuple(SetMove.Kind.OUT_TO_CAR, "K-01"), tuple(SetMove.Kind.PUT, "Rack W, bay 8"));

        book.stock().handOut("d", "08W1", NOW, TODAY);
        assertThat(book.stock().handOut("e", "08W3", NOW, TODAY)).isEqualTo(Arrival.ALREADY);
        assertThat(book.stock().listMoves(set("08W1").key())).hasSize(3);
    }

    @Test
    void placesAreListedAsPeopleCountThem() {
        assertThat(book.stock().list())
                .extracting(KeptSet::place)
                .containsSubsequence("Rack W, bay 1", "Rack W, bay 8", "Rack W, bay 11", "Rack W, bay 12");
    }

    /** The car is still on the hoist: nobody has recorded yet on what it leaves. */
    @Test
    void whatCameOffTheCarIsPutAwayBeforeItLeaves() {
        book.racks().name("rack", rack("K-##", 2, 1), NOW);
        assertThat(set("08S1").ran().onCar()).isTrue();
        book.stock().put("a", "08S1", "K-01", NOW, TODAY);
        assertThat(set("08S1").lies()).isTrue();
        assertThat(set("08S1").ran().onCar()).isFalse();
        refused("on the car", () -> book.stock().put("b", "03W1", "K-02", NOW, TODAY));
    }

    @Test
    void aRackIsChangedAndTakenDownOnlyWhenNothingIsLost() {
        book.racks().name("rack", rack("K-##", 4, 1), NOW);
        refused("another rack has a place “k-01”", () -> book.racks().name("other", rack("k-##", 2, 1), NOW));
        book.stock().put("a", "03S1", "K-04", NOW, TODAY);
        refused("a set lies at “K-04”", () -> book.racks().takeDown("b", "rack", 0, NOW));
        refused("a set lies at “K-04”", () -> book.racks().change("b", "rack", 0, rack("K-##", 3, 1), NOW));
        book.racks().change("b", "rack", 0, rack("K-##", 40, 2), NOW);
        refused("somebody has changed this rack", () -> book.racks().change("c", "rack", 0, rack("K-##", 5, 1), NOW));
        assertThat(book.racks().list())
                .singleElement()
                .satisfies(kept -> assertThat(kept.turn()).isEqualTo(1));
        book.stock().handOut("d", "03S1", NOW, TODAY);
        book.racks().takeDown("e", "rack", 1, NOW);
        assertThat(book.racks().list()).isEmpty();
        refused("no such rack", () -> book.racks().takeDown("f", "rack", 2, NOW));
    }

    /** Car 03 lies where the book has it, 04 was laid elsewhere, 05 is not found; a strange wheel lies there; nobody looked at 02's place. */
    @Test
    void aCountFindsWhatIsOtherwiseAndEachIsSettledOnce() {
        book.racks().name("rack", rack("K-##", 6, 1), NOW);
        book.stock().put("2", "02S1", "K-02", NOW, TODAY);
        book.stock().put("3", "03S1", "K-03", NOW, TODAY);
        book.stock().put("4", "04S1", "K-04", NOW, TODAY);
        book.stock().put("5", "05S1", "K-05", NOW, TODAY);
        var counts = book.counts();
        counts.begin("count", NOW);
        assertThat(counts.begin("count", NOW)).isEqualTo(Arrival.ALREADY);
        refused("a count goes on", () -> counts.begin("second", NOW));
        counts.scan("s1", "count", "K-03", "03S4", NOW);
        assertThat(counts.scan("s1", "count", "K-03", "03S4", NOW)).isEqualTo(Arrival.ALREADY);
        counts.scan("s2", "count", "K-04", "", NOW);
        counts.scan("s3", "count", "K-05", "", NOW);
        counts.scan("s4", "count", "K-06", "04S2", NOW);
        counts.scan("s5", "count", "K-06", "XX1", NOW);
        refused("no place “K-9”", () -> counts.scan("s6", "count", "K-9", "", NOW));
        refused("no such count", () -> counts.scan("s6", "nothing", "K-03", "", NOW));
        refused("no wheel of the book", () -> counts.scan("s6", "count", "K-03", "x".repeat(61), NOW));
        counts.end("count", NOW);
        refused("has ended", () -> counts.scan("s6", "count", "K-03", "", NOW));
        refused("has ended", () -> counts.end("count", NOW));
        var found = counts.listDifferences("count");
        assertThat(found)
                .extracting(StockDifference::kind, StockDifference::bookPlace, StockDifference::foundPlace)
                .containsExactlyInAnyOrder(
                        tuple(StockDifference.Kind.ELSEWHERE, "K-04", "K-06"),
                        tuple(StockDifference.Kind.MISSING, "K-05", null),
                        tuple(StockDifference.Kind.UNKNOWN, null, "K-06"));
        assertThat(counts.find("count"))
                .hasValueSatisfying(
                        count -> assertThat(List.of(count.places(), count.sets(), count.differences(), count.open()))
                                .containsExactly(4, 2, 3, 3));

        for (var each : found) {
            var answer = each.answers().getLast();
            if (each.kind() == StockDifference.Kind.ELSEWHERE) {
                answer = StockDifference.Answer.BOOK_FOLLOWS;
            }
            var chosen = answer;
            assertThat(counts.answer("m" + each.id(), each.id(), chosen, NOW, TODAY))
                    .isEqualTo(Arrival.STORED);
            assertThat(counts.answer("n" + each.id(), each.id(), chosen, NOW, TODAY))
                    .isEqualTo(Arrival.ALREADY);
        }
        assertThat(set("04S1").place()).isEqualTo("K-06");
        assertThat(set("05S1").isLost()).isTrue();
        assertThat(counts.list())
                .singleElement()
                .satisfies(count -> assertThat(count.open()).isZero());
        refused("cannot be done", () -> counts.answer("x", "nothing", StockDifference.Answer.LEFT_SO, NOW, TODAY));
        assertThat(book.check()).isEmpty();
    }

    @Test
    void whatWasMovedSinceTheCountIsLeftAlone() {
        book.racks().name("rack", rack("K-##", 6, 1), NOW);
        book.stock().put("3", "03S1", "K-03", NOW, TODAY);
        book.counts().begin("count", NOW);
        book.counts().scan("s1", "count", "K-04", "03S4", NOW);
        book.counts().end("count", NOW);
        var difference = book.counts().listDifferences("count").getFirst();
        book.stock().put("4", "03S1", "K-05", NOW, TODAY);
        refused(
                "moved after the count",
                () -> book.counts().answer("m", difference.id(), StockDifference.Answer.BOOK_FOLLOWS, NOW, TODAY));
        assertThat(set("03S1").place()).isEqualTo("K-05");
        assertThat(book.counts().answer("m", difference.id(), StockDifference.Answer.LAID_BACK, NOW, TODAY))
                .isEqualTo(Arrival.STORED);
    }

    @Test
    void rowsOfTheStoreStay() {
        book.racks().name("rack", rack("K-##", 4, 1), NOW);
        book.stock().put("a", "03S1", "K-02", NOW, TODAY);
        var rows = Jdbi.create("jdbc:sqlite:" + folder.resolve("book.sqlite"));
        for (var change : List.of(
                "delete from store_rack",
                "update store_rack set room = 'x'",
                "delete from set_move",
                "update set_move set person = 'x'")) {
            assertThatThrownBy(() -> rows.useHandle(handle -> handle.execute(change)))
                    .hasStackTraceContaining("never");
        }
    }
}
