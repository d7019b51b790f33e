package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.StoreSaid;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What docs/commands.md says of a server's failure and of going back to a moment, done on real servers. */
class PostgresqlRecoveryTest {
    private static final CarHistory CAR =
            DemoShop.histories(LocalDate.of(2026, 11, 25)).getFirst();
    private static final String VISIT = CAR.visits().getLast().id();
    private static final int READINGS = 40;
    private static final int BEFORE_THE_KILL = 10;

    private Path programs;

    @BeforeEach
    void find() throws Exception {
        var found = PostgresqlCluster.findPrograms();
        assumeTrue(found.isPresent(), "PostgreSQL is not installed; Debian has it in the package postgresql");
        programs = found.get();
    }

    private static Reading voltage(int number) {
        return new Reading("sent-" + number, Measure.BATTERY_VOLTAGE, null, null, null, 12.5, "12.5 V", null, null);
    }

    private static List<String> sent(Book book) {
        return book.cars().find(CAR.vehicle().id()).orElseThrow().getVisit(VISIT).readings().stream()
                .map(Reading::id)
                .filter(id -> id.startsWith("sent-"))
                .toList();
    }

    @Test
    void aBookIsBroughtBackToTheMomentBeforeAMistake() throws Exception {
        var server = PostgresqlCluster.startArchiving(programs);
        try {
            PostgresqlCluster backup;
            String moment;
            try (var book = Book.onServer(server.database("shop"))) {
                book.records().addCar(CAR);
                backup = server.baseBackup("-X", "none");
                book.readings().add(VISIT, List.of(voltage(1)));
                moment = server.psql("select clock_timestamp()");
                server.psql("select pg_sleep(0.1)");
                book.readings().add(VISIT, List.of(voltage(2)));
                assertThat(sent(book)).containsExactly("sent-1", "sent-2");
            }
            archiveAll(server);
            server.kill();
            backup.restore(server, moment);
            try (var book = Book.onServer(backup.address("shop"))) {
                assertThat(sent(book)).containsExactly("sent-1");
                assertThat(book.check()).isEmpty();
                // It goes on from there.
                book.readings().add(VISIT, List.of(voltage(3)));
                assertThat(sent(book)).containsExactly("sent-1", "sent-3");
            } finally {
                backup.stop();
            }
        } finally {
            server.remove();
        }
    }

    private static void archiveAll(PostgresqlCluster server) throws Exception {
        var last = server.psql("select pg_walfile_name(pg_current_wal_lsn())");
        server.psql("select pg_switch_wal()");
        for (int i = 0; i < 600; i++) {
            if (server.psql("select last_archived_wal from pg_stat_archiver").compareTo(last) >= 0) {
                return;
            }
            Thread.sleep(50);
        }
        throw new AssertionError(last + " was not archived");
    }

    /** Each reading is sent until it is acknowledged, as a tablet does, while the server is killed and its follower takes over. */
    @Test
    void theFollowerGoesOnAndNothingAcknowledgedIsLostOrDoubled() throws Exception {
        var server = PostgresqlCluster.startArchiving(programs);
        server.database("shop");
        var follower = server.follow();
        var both =
                "jdbc:postgresql://127.0.0.1:%d,127.0.0.1:%d/shop?user=shop&targetServerType=primary&connectTimeout=2"
                        .formatted(server.port(), follower.port());
        var some = new CountDownLatch(BEFORE_THE_KILL);
        var refused = new ArrayList<Said>();
        try (var book = Book.onServer(both);
                var sender = Executors.newSingleThreadExecutor()) {
            book.records().addCar(CAR);
            var sending = sender.submit(() -> {
                for (int i = 0; i < READINGS; i++) {
                    send(book, voltage(i), refused);
                    some.countDown();
                }
                return true;
            });
            assertThat(some.await(60, TimeUnit.SECONDS)).isTrue();
            server.kill();
            // The sender meets a book without a server before there is one again.
            Thread.sleep(500);
            follower.promote();
            assertThat(sending.get(120, TimeUnit.SECONDS)).isTrue();
            assertThat(refused)
                    .isNotEmpty()
                    .allMatch(said -> said instanceof StoreSaid.NotReached || said instanceof StoreSaid.StopsOrStarts);
            assertThat(sent(book))
                    .containsExactlyInAnyOrderElementsOf(IntStream.range(0, READINGS)
                            .mapToObj(number -> "sent-" + number)
                            .toList());
            assertThat(book.check()).isEmpty();
        } finally {
            follower.stop();
            server.remove();
        }
    }

    private static void send(Book book, Reading reading, List<Said> refused) throws InterruptedException {
        while (true) {
            try {
                book.readings().add(VISIT, List.of(reading));
                return;
            } catch (BookException e) {
                refused.add(e.said());
                Thread.sleep(50);
            }
        }
    }
}
