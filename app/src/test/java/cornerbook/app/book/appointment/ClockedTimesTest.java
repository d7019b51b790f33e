package cornerbook.app.book.appointment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.visit.Because;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Visit;
import cornerbook.core.days.ExpectedMinutes;
import cornerbook.core.days.PlannedWork;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Visits of an invented car that were worked on tablets. */
class ClockedTimesTest {
    private static final String CAR = "demo-03";
    private static final Instant NINE = Instant.parse("2026-11-25T09:00:00Z");

    @AutoClose
    private Book book;

    private Visit visit;

    @BeforeEach
    void open(@TempDir Path folder) {
        book = EmptyBook.open(folder);
        book.records().addCar(ServedShop.car(CAR));
        visit = ServedShop.car(CAR).visits().getLast();
    }

    @Test
    void aVisitCountsFromItsFirstEntryToTheHandOver() {
        tick("a", 20);
        tick("b", 0);
        assertThat(expected().visits()).as("it is still in the bay").isZero();
        handOver("c", 170);
        handOver("d", 180);
        assertThat(expected()).isEqualTo(ExpectedMinutes.of(PlannedWork.WHEELS_AND_BRAKES, List.of(180.0)));
        assertThat(expected().usual()).isGreaterThan(PlannedWork.WHEELS_AND_BRAKES.usualMinutes());
    }

    @Test
    void aCancelledVisitOrOneWithoutEntriesCountsNothing() {
        handOver("c", 170);
        assertThat(expected().visits()).isZero();
        tick("a", 0);
        assertThat(expected().visits()).isOne();
        book.visits().cancel(visit.id(), new Because(null, "wrong car", "Ines", ServedShop.TODAY));
        assertThat(expected().visits()).isZero();
        assertThat(expected().usual()).isCloseTo(PlannedWork.WHEELS_AND_BRAKES.usualMinutes(), within(1e-9));
    }

    private ExpectedMinutes expected() {
        var all = book.clockedTimes().expected();
        assertThat(all.values().stream().mapToInt(ExpectedMinutes::visits).sum())
                .as("counted for one work only")
                .isLessThanOrEqualTo(1);
        return Objects.requireNonNull(all.get(PlannedWork.WHEELS_AND_BRAKES));
    }

    private void tick(String id, int minutes) {
        book.bay()
                .addTick(
                        visit.id(),
                        new WorkTick(
                                id,
                                WorkTick.RECEIVED,
                                null,
                                WorkTick.Answer.DONE,
                                true,
                                List.of(),
                                "Ines",
                                NINE.plusSeconds(60L * minutes)),
                        null);
    }

    private void handOver(String id, int minutes) {
        book.bay()
                .addDeparture(visit.id(), new Departure(id, "Ines", NINE.plusSeconds(60L * minutes), List.of(), null));
    }
}
