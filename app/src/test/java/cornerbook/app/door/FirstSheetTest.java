package cornerbook.app.door;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Learning;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.findings.FindingsHandler;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The sheet that is drawn ahead waits for the first page, and hinders nobody who ends the program. */
class FirstSheetTest {
    @Test
    void itIsDrawnOnceAPageWasAnsweredAndNotBefore() throws Exception {
        var pageAnswered = new AtomicBoolean();
        var readAfterPage = new CompletableFuture<Boolean>();
        var drawn = new CountDownLatch(1);
        try (var ahead = new FirstSheet(() -> {
            readAfterPage.complete(pageAnswered.get());
            return Optional.of(() -> {
                drawn.countDown();
                return new byte[0];
            });
        })) {
            ahead.start();
            assertThat(readAfterPage.getNow(null)).isNull();
            pageAnswered.set(true);
            ahead.pageAnswered();
            drawn.await();
            assertThat(readAfterPage.get()).isTrue();
        }
    }

    @Test
    @Timeout(60)
    void closingWaitsForNoDrawing() throws Exception {
        var drawing = new CountDownLatch(1);
        var mayEnd = new CountDownLatch(1);
        var ended = new CountDownLatch(1);
        var ahead = new FirstSheet(() -> Optional.of(() -> {
            drawing.countDown();
            await(mayEnd);
            ended.countDown();
            return new byte[0];
        }));
        ahead.start();
        ahead.pageAnswered();
        drawing.await();
        // Were the drawing waited for, it would never end.
        ahead.close();
        assertThat(ended.getCount()).isOne();
        mayEnd.countDown();
        ended.await();
    }

    @Test
    void aClosedOneAsksTheBookNothing() {
        var asked = new AtomicBoolean();
        var ahead = new FirstSheet(() -> {
            asked.set(true);
            return Optional.empty();
        });
        ahead.start();
        ahead.pageAnswered();
        ahead.close();
        // Whether it was asked before is settled now: closing took turns with the asking.
        boolean before = asked.getAndSet(false);
        ahead.pageAnswered();
        assertThat(asked).isFalse();
        assertThat(before).isFalse();
    }

    /** It is the sheet of the visit that was here last and not cancelled; a book without visits has none. */
    @Test
    void itIsTheSheetOfTheLatestVisit(@TempDir Path folder) {
        var car = DemoShop.histories(ServedShop.TODAY).getFirst();
        try (var book = Book.open(folder.resolve("book"))) {
            var visits = book.visits();
            assertThat(visits.findLatest()).isEmpty();
            var learning = new Learning(book, new Assessor(LimitsFile.load()), ServedShop.CLOCK);
            var lists = new CarLists(book, learning, ServedShop.CLOCK);
            var findings = new FindingsHandler(
                    new Desk(book, learning, lists, ServedShop.CLOCK), new Pages(), Letterhead.of("Shop"));
            assertThat(findings.latestSheet()).isEmpty();
            book.records().addCars(List.of(car));
            assertThat(visits.findLatest()).contains(car.visits().getLast().id());
            assertThat(new String(findings.latestSheet().orElseThrow().get(), ISO_8859_1))
                    .startsWith("%PDF-");
            learning.close();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await(1, TimeUnit.MINUTES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
