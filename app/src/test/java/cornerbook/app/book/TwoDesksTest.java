package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLedger.NewBill;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.store.BookException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two desks that make bills at the same moment, each with a book of its own open, on both kinds of database. */
class TwoDesksTest {
    private static final String[] CARS = {"demo-03", "demo-08"};
    private static final int ROUNDS = 20;

    @Test
    void numbersOfABookInAFolderHaveNoGap(@TempDir Path folder) throws Exception {
        numbersHaveNoGap(() -> EmptyBook.open(folder));
    }

    @Test
    void numbersOfABookOnAServerHaveNoGap() throws Exception {
        var programs = PostgresqlCluster.findPrograms();
        assumeTrue(programs.isPresent(), "PostgreSQL is not installed; Debian has it in the package postgresql");
        var cluster = PostgresqlCluster.start(programs.get());
        try {
            var url = cluster.database("desks");
            numbersHaveNoGap(() -> Book.onServer(url));
        } finally {
            cluster.stop();
        }
    }

    private static void numbersHaveNoGap(Supplier<Book> open) throws Exception {
        try (var one = open.get();
                var other = open.get();
                var desks = Executors.newFixedThreadPool(CARS.length)) {
            AgreedWork.cars(one, CARS);
            for (var car : CARS) {
                AgreedWork.agree(one, car + "-v7", "CA-QC", Map.of("Pads", "100.00"));
            }
            var start = new CountDownLatch(1);
            var done = IntStream.range(0, CARS.length)
                    .mapToObj(desk -> desks.submit(() -> {
                        start.await();
                        work(desk == 0 ? one : other, CARS[desk]);
                        return desk;
                    }))
                    .toList();
            start.countDown();
            for (var desk : done) {
                desk.get();
            }
            assertThat(one.bills().listLatest(1000))
                    .extracting(Bill::number)
                    .containsExactlyElementsOf(IntStream.iterate(2 * ROUNDS * CARS.length, n -> n > 0, n -> n - 1)
                            .boxed()
                            .toList());
        }
    }

    /** Bills the same work and gives it back, over and over; every second bill is refused and must take no number. */
    private static void work(Book book, String car) {
        for (int round = 0; round < ROUNDS; round++) {
            int number = book.bills().make(bill(car, round + ".a"));
            try {
                book.bills().make(bill(car, round + ".b"));
                throw new AssertionError("billed twice");
            } catch (BookException expected) {
                assertThat(expected.isFailure()).isFalse();
            }
            book.bills()
                    .credit(
                            car + round + ".c",
                            number,
                            CreditReason.OTHER,
                            "Again",
                            AgreedWork.TODAY,
                            "",
                            AgreedWork.NOW);
        }
    }

    private static NewBill bill(String car, String round) {
        return new NewBill(car + round, car + "-v7", List.of("Pads"), List.of(), AgreedWork.TODAY, "", AgreedWork.NOW);
    }
}
