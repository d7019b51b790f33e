package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.estimate.WorkAnswer;
import cornerbook.app.book.order.OrderLevel;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.book.shop.Absence;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.release.ChargedWork;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A book goes from a file to a real PostgreSQL and back, and nothing of it is lost or becomes another. */
class MoveTest {
    private static final List<CarHistory> SHOP = DemoShop.histories(LocalDate.of(2026, 11, 25));

    @RegisterExtension
    private final PostgresqlOfTests postgresql = new PostgresqlOfTests();

    @TempDir
    private Path folder;

    /** With photos and notes, and a reading that was put right twice, by ids that do not stand in the order of the entries. */
    @BeforeEach
    void fill() {
        try (var book = EmptyBook.open(folder.resolve("first"))) {
            book.records()
                    .add(IntStream.range(0, SHOP.size())
                            .mapToObj(i -> new Notes(i).ofCar(SHOP.get(i)))
                            .toList());
            var visit = SHOP.getFirst().visits().getLast().id();
            book.readings().add(visit, List.of(voltage("z-wrong", null, 13.1)));
            book.readings().add(visit, List.of(voltage("m-wrong-too", "z-wrong", 12.1)));
            book.readings().add(visit, List.of(voltage("a-right", "m-wrong-too", 12.6)));
            PostgresqlTest.store(book);
            PostgresqlTest.bill(book, visit);
            book.estimates()
                    .link(
                            "link",
                            book.estimates().of(visit).estimates().getFirst().id(),
                            "hash",
                            "Ida",
                            AgreedWork.NOW);
            book.estimates()
                    .answer(new WorkAnswer(
                            "free",
                            visit,
                            ChargedWork.find("PADS.FRONT").orElseThrow(),
                            WorkAnswer.Kind.WITHOUT_CHARGE,
                            null,
                            "SAFETY",
                            "Ida",
                            AgreedWork.NOW));
            book.devices().putPerson("Ida", "no hash");
            book.hours().away(new Absence("away", "Ida", AgreedWork.TODAY, AgreedWork.TODAY), "Ida", AgreedWork.NOW);
            book.hours().back("away", "Ida", AgreedWork.NOW);
            book.orders().keep("level", new OrderLevel(null, "40", "2,50"), "Ida", AgreedWork.NOW);
            book.bills()
                    .credit("back", 1, CreditReason.WRONG_CAR, "wrong car", AgreedWork.TODAY, "Ida", AgreedWork.NOW);
            book.prices()
                    .keep(
                            "place",
                            new TaxPlace(
                                    "ZZ",
                                    CurrencyUnit.CAD,
                                    AgreedWork.TODAY,
                                    List.of(new TaxPlace.OfShop("Invented", new BigDecimal("9.975"), "1"))),
                            "Ida",
                            AgreedWork.NOW);
            book.prices()
                    .keep(
                            "price",
                            List.of(new PriceRow(
                                    PriceKey.HOUR,
                                    PriceValue.of(Money.parse("CAD 115.50")),
                                    AgreedWork.TODAY,
                                    "Ida",
                                    AgreedWork.NOW)));
        }
    }

    @Test
    void everythingComesBackFromServerAsItWasInTheFile() throws Exception {
        var url = postgresql.database();
        try (var first = EmptyBook.open(folder.resolve("first"))) {
            var moved = first.move(url);
            assertThat(moved.counts().cars()).isEqualTo(SHOP.size());
            assertThat(moved.rows()).isEqualTo(rows(folder.resolve("first")).size());
        }
        try (var there = Book.onServer(url)) {
            assertThat(there.check()).isEmpty();
            there.move(folder.resolve("back").toString());
        }
        assertThat(rows(folder.resolve("back"))).containsExactlyElementsOf(rows(folder.resolve("first")));
        try (var back = Book.open(folder.resolve("back"));
                var first = EmptyBook.open(folder.resolve("first"))) {
            assertThat(back.check()).isEmpty();
            for (var car : SHOP) {
                var id = car.vehicle().id();
                assertThat(back.records().find(id))
                        .isPresent()
                        .isEqualTo(first.records().find(id));
            }
        }
    }

    /** A row that got lost of a table without rows would not be missed. */
    @Test
    void whatIsMovedHasWhatCarsAreChargedAndWhereTheirWheelsLie() throws Exception {
        assertThat(rows(folder.resolve("first")))
                .extracting(row -> row.replaceFirst(" .*", ""))
                .contains(
                        "price",
                        "tax_place",
                        "shop_tax",
                        "estimate",
                        "estimate_line",
                        "estimate_tax",
                        "estimate_link",
                        "agreement",
                        "agreement_answer",
                        "bill",
                        "bill_line",
                        "bill_tax",
                        "bill_payment",
                        "order_level",
                        "store_rack",
                        "set_move",
                        "set_intake",
                        "set_term",
                        "store_room",
                        "set_bringing",
                        "person_away",
                        "person_back",
                        "stock_count",
                        "stock_scan",
                        "stock_difference",
                        "stock_answer");
    }

    @Test
    void oneThatHasEntriesIsNotWrittenOver() throws Exception {
        var url = postgresql.database();
        try (var used = Book.onServer(url)) {
            used.records().addCar(SHOP.getLast());
        }
        try (var other = EmptyBook.open(folder.resolve("other"))) {
            other.records().addCar(SHOP.getLast());
        }
        var before = rows(folder.resolve("other"));
        try (var first = EmptyBook.open(folder.resolve("first"))) {
            assertRefused(() -> first.move(url), "has a book with entries already, expected an empty database");
            assertRefused(
                    () -> first.move(folder.resolve("other").toString()), "has a book already, expected one without");
        }
        assertThat(rows(folder.resolve("other"))).isEqualTo(before);
        try (var used = Book.onServer(url)) {
            assertThat(used.cars().listHistories()).containsExactly(SHOP.getLast());
        }
    }

    /** What PostgreSQL does not take, as a character that no text of it may have, leaves nothing behind. */
    @Test
    void oneThatCannotStandThereLeavesNothing() throws Exception {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("first/book.sqlite"));
                var statement = connection.createStatement()) {
            statement.execute(
                    "update customer set name = 'A' || char(0) || 'B' where id = (select min(id) from customer)");
        }
        var url = postgresql.database();
        try (var first = EmptyBook.open(folder.resolve("first"))) {
            assertThatThrownBy(() -> first.move(url))
                    .extracting(InEnglish::told, STRING)
                    .isNotBlank();
        }
        try (var there = Book.onServer(url)) {
            assertThat(there.cars().listHistories()).isEmpty();
        }
    }

    /** As a failing disk would, a trigger keeps another letter than it was given. */
    @Test
    void oneThatIsNotKeptAsItWasGivenIsNotKeptAtAll() throws Exception {
        var url = postgresql.database();
        Book.onServer(url).close();
        try (var connection = DriverManager.getConnection(url);
                var statement = connection.createStatement()) {
            statement.execute("create function otherwise() returns trigger language plpgsql as"
                    + " $$ begin new.name := 'X' || substr(new.name, 2); return new; end $$");
            statement.execute(
                    "create trigger otherwise before insert on customer for each row execute function otherwise()");
        }
        try (var first = EmptyBook.open(folder.resolve("first"))) {
            assertRefused(() -> first.move(url), "The rows of customer in " + url.replaceFirst("\\?.*", ""));
        }
        try (var there = Book.onServer(url)) {
            assertThat(there.cars().listHistories()).isEmpty();
        }
    }

    private static void assertRefused(ThrowingCallable move, String sentence) {
        assertThatThrownBy(move).extracting(InEnglish::told, STRING).contains(sentence);
    }

    /** Every row of every table but those that are made anew of the others, as SQLite itself writes its values, in order. */
    private static List<String> rows(Path book) throws SQLException {
        assertThat(Files.exists(book.resolve("book.sqlite"))).isTrue();
        var rows = new ArrayList<String>();
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + book.resolve("book.sqlite"));
                var statement = connection.createStatement()) {
            var tables = new ArrayList<String>();
            try (var found = statement.executeQuery("select name from sqlite_schema where type = 'table'"
                    + " and name not like 'sqlite%' and name not in"
                    + " ('flyway_schema_history', 'judged_by', 'car_verdict', 'car_words', 'car_share')")) {
                while (found.next()) {
                    tables.add(found.getString(1));
                }
            }
            for (var table : tables) {
                var columns = new ArrayList<String>();
                try (var found = statement.executeQuery("select name from pragma_table_info('" + table + "')")) {
                    while (found.next()) {
                        columns.add("typeof(\"%s\") || quote(\"%1$s\")".formatted(found.getString(1)));
                    }
                }
                try (var found =
                        statement.executeQuery("select " + String.join(" || ', ' || ", columns) + " from " + table)) {
                    while (found.next()) {
                        rows.add(table + " " + found.getString(1));
                    }
                }
            }
        }
        rows.sort(null);
        return rows;
    }

    private static Reading voltage(String id, @Nullable String corrects, double volts) {
        var reason = corrects == null ? null : "read from the wrong line";
        return new Reading(id, Measure.BATTERY_VOLTAGE, null, null, null, volts, volts + " V", corrects, reason);
    }
}
