package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cornerbook.app.demo.DemoShop;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The book in a real PostgreSQL does what it does in SQLite. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PostgresqlTest {
    private static final List<CarHistory> SHOP = DemoShop.histories(LocalDate.of(2026, 11, 25));

    private PostgresqlCluster cluster;

    @BeforeAll
    void start() throws Exception {
        var programs = PostgresqlCluster.findPrograms();
        assumeTrue(programs.isPresent(), "PostgreSQL is not installed; Debian has it in the package postgresql");
        cluster = PostgresqlCluster.start(programs.get());
    }

    @AfterAll
    void stop() throws Exception {
        if (cluster != null) {
            cluster.stop();
        }
    }

    @Test
    void theShopComesOutAsItWentInAndAsSqliteGivesIt(@TempDir Path folder) throws Exception {
        var url = cluster.database("shop");
        try (var book = Book.onServer(url);
                var file = Book.open(folder)) {
            for (var each : List.of(book, file)) {
                each.addAll(SHOP);
                var open = each.listOpenRetorques().getFirst();
                each.recordRetorque(open.visitId(), open.dueDate(), open.dueOdometerKm(), open.torqueNm());
            }
            assertThat(book.check()).isEmpty();
            assertThat(book.listHistories()).containsExactlyElementsOf(file.listHistories());
            assertThat(book.listHistories()).containsExactlyInAnyOrderElementsOf(SHOP);
            assertThat(book.listVehicles()).isEqualTo(file.listVehicles());
            assertThat(book.listVisits(LocalDate.of(2026, 11, 25)))
                    .isEqualTo(file.listVisits(LocalDate.of(2026, 11, 25)));
            assertThat(book.listOpenRetorques()).isEqualTo(file.listOpenRetorques());
            assertThatThrownBy(() -> book.add(SHOP.getFirst())).hasMessageContaining("in the book already");
            assertThatThrownBy(() -> book.backup(folder.resolve("copy"))).hasMessageContaining("pg_dump");
        }
        try (var again = Book.onServer(url)) {
            assertThat(again.listHistories()).hasSize(SHOP.size());
        }
    }

    @Test
    void photosAndNotesComeOutAsTheyWentInAndTheCheckLooksAtThem() throws Exception {
        var url = cluster.database("notes");
        var record = new Notes(3).ofCar(SHOP.getFirst());
        try (var book = Book.onServer(url)) {
            book.addRecords(List.of(record));
            assertThat(book.findRecord(record.history().vehicle().id())).contains(record);
            assertThat(book.check()).isEmpty();
            try (var connection = DriverManager.getConnection(url);
                    var statement = connection.createStatement()) {
                statement.execute("update photo set jpeg = ''");
            }
            assertThat(book.check()).isNotEmpty().allMatch(problem -> problem.endsWith("only its digest is there"));
        }
    }

    @Test
    void readingsAreNeverChangedOrDeleted() throws Exception {
        var url = cluster.database("kept");
        try (var book = Book.onServer(url)) {
            book.add(SHOP.getFirst());
        }
        try (var connection = DriverManager.getConnection(url);
                var statement = connection.createStatement()) {
            for (var sql : List.of(
                    "update reading set amount = 1",
                    "delete from reading",
                    "truncate reading cascade",
                    "truncate rival_reading cascade")) {
                assertThatThrownBy(() -> statement.execute(sql)).hasMessageContaining("a reading is never");
            }
        }
    }

    @Test
    void writersTakeTurns() throws Exception {
        var url = cluster.database("turns");
        var visitId = SHOP.getFirst().visits().getLast().id();
        try (var one = Book.onServer(url);
                var other = Book.onServer(url);
                var threads = Executors.newFixedThreadPool(4)) {
            one.add(SHOP.getFirst());
            var before = one.findHistory(SHOP.getFirst().vehicle().id()).orElseThrow();
            var work = IntStream.range(0, 40)
                    .<Callable<String>>mapToObj(number -> () -> {
                        var reading = new Reading(
                                "turn-" + number,
                                Measure.BATTERY_VOLTAGE,
                                null,
                                null,
                                null,
                                12.5,
                                "12.5 V",
                                null,
                                null);
                        (number % 2 == 0 ? one : other).addReadings(visitId, List.of(reading));
                        return reading.id();
                    })
                    .toList();
            for (var done : threads.invokeAll(work)) {
                assertThat(done.get()).startsWith("turn-");
            }
            assertThat(one.findHistoryOfVisit(visitId)
                            .orElseThrow()
                            .getVisit(visitId)
                            .readings())
                    .extracting(Reading::id)
                    .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                    before.getVisit(visitId).readings().stream().map(Reading::id),
                                    IntStream.range(0, 40).mapToObj(number -> "turn-" + number))
                            .toList());
        }
    }

    @Test
    void aServerThatCannotBeUsedIsNamedWithoutItsPassword() throws Exception {
        var known = cluster.database("known");
        assertThatThrownBy(() -> Book.onServer(known.replace("/known?", "/unknown?password=secret&")))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("refuses access")
                .hasMessageNotContaining("secret");
        assertThatThrownBy(() -> Book.onServer("jdbc:postgresql://127.0.0.1:1/shop"))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("cannot be reached");
    }
}
