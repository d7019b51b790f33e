package cornerbook.app.book.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.visit.Because;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.assess.CarShare;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.reread.ReadTwice;
import cornerbook.core.reread.judge.UnchangedGrooves;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteConfig.TransactionMode;

/** What is learned from the shares that the book keeps is what is learned from all histories, and only what changed is read. */
class CarSharesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final List<CarHistory> CARS = DemoShop.histories(TODAY);
    private static final int CHANGES = 6;

    @TempDir
    private Path folder;

    @Test
    void aShareComesBackBitForBit() {
        assertThat(CARS).allSatisfy(car -> {
            var share = CarShare.of(car);
            assertThat(share.wear()).as("wear of " + car.vehicle().id()).isNotEmpty();
            assertThat(ShareBytes.share(ShareBytes.of(share))).isEqualTo(share);
        });
        assertThat(CARS).map(car -> CarShare.of(car).pads()).anyMatch(pads -> !pads.isEmpty());
        var twice =
                List.of(new ReadTwice("Ada", "", List.of(0.1 + 0.2, -0.0)), new ReadTwice("Élodie", "Ada", List.of()));
        assertThat(ShareBytes.readTwice(ShareBytes.of(twice))).isEqualTo(twice);
    }

    /** In whatever order readings are stored, corrected and read again by others, visits cancelled and cars added. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void whateverChangesItIsWhatAllHistoriesTeach(long seed) {
        var random = new Random(seed);
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(CARS.subList(0, 8));
            assertSameAsHistories(book, Map.of());
            var persons = new HashMap<String, String>();
            for (int i = 0; i < CHANGES; i++) {
                change(book, random, i, persons);
                assertSameAsHistories(book, persons);
            }
        }
    }

    private static void assertSameAsHistories(Book book, Map<String, String> persons) {
        var histories = book.cars().listHistories();
        var learned = book.knowledge().learn(TODAY);
        assertThat(learned).isEqualTo(Learner.learn(histories, TODAY));
        assertThat(book.knowledge().readTwice())
                .containsExactlyInAnyOrderElementsOf(histories.stream()
                        .flatMap(car -> UnchangedGrooves.of(car, persons).stream())
                        .toList());
    }

    private static void change(Book book, Random random, int number, Map<String, String> persons) {
        var car = book.cars().find(CARS.get(random.nextInt(8)).vehicle().id()).orElseThrow();
        var last = car.visits().getLast();
        switch (random.nextInt(4)) {
            case 0 -> book.readings().add(last.id(), List.of(readAgain(last, "again-" + number)));
            case 1 -> {
                var again = readAgain(last, "una-" + number);
                book.bay().addReading(last.id(), again, "Una", Instant.parse("2026-11-25T08:00:00Z"));
                persons.put(again.id(), "Una");
            }
            case 2 -> {
                if (car.visits().size() > 2) {
                    book.visits().cancel(last.id(), new Because(null, "Another car", "Ada", TODAY));
                }
            }
            default -> {
                if (book.cars().list().size() < CARS.size()) {
                    book.records().addCar(CARS.get(book.cars().list().size()));
                }
            }
        }
    }

    private static Reading readAgain(Visit visit, String id) {
        var was = new StandingReadings(visit).all(Measure.TREAD_DEPTH).getFirst();
        return new Reading(
                id,
                was.measure(),
                was.corner(),
                was.wheelTag(),
                was.spot(),
                was.value() / 2,
                "half",
                was.id(),
                "read again");
    }

    @Test
    void oneVisitChangesTheShareOfItsCarAlone() {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(CARS);
            book.knowledge().learn(TODAY);
            var before = shares();
            assertThat(before).hasSize(CARS.size());
            var car = CARS.get(3);
            book.readings()
                    .add(
                            car.visits().getLast().id(),
                            List.of(readAgain(car.visits().getLast(), "again")));
            book.knowledge().learn(TODAY);
            assertThat(changed(before, shares())).containsExactly(car.vehicle().id());
        }
    }

    /** Marks put in the rows tell which were written anew: none of those that are not old, each of another program's. */
    @Test
    void whatAnotherProgramTookIsTakenAnewAndNothingElse() {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(CARS);
            var learned = book.knowledge().learn(TODAY);
            var right = shares();
            // What is kept is used: with one car's share in the place of another's, something else is learned.
            execute("update car_share set learning = (select learning from car_share order by vehicle_id limit 1)");
            assertThat(book.knowledge().learn(TODAY).wear()).isNotEqualTo(learned.wear());
            execute("update car_share set program = 'another'");
            assertThat(book.knowledge().learn(TODAY)).isEqualTo(learned);
            assertThat(changed(right, shares())).isEmpty();
        }
    }

    private record Kept(long revision, String program, List<Byte> learning) {}

    private Map<String, Kept> shares() {
        try (var handle = handle()) {
            var shares = new HashMap<String, Kept>();
            handle.select("select * from car_share")
                    .map((row, context) -> {
                        var bytes = new ArrayList<Byte>();
                        for (byte each : row.getBytes("learning")) {
                            bytes.add(each);
                        }
                        return shares.put(
                                row.getString("vehicle_id"),
                                new Kept(row.getLong("revision"), row.getString("program"), bytes));
                    })
                    .list();
            return shares;
        }
    }

    private void execute(String sql) {
        try (var handle = handle()) {
            handle.execute(sql);
        }
    }

    private Handle handle() {
        return Jdbi.open(BookFile.source(folder.resolve(BookFile.NAME), TransactionMode.IMMEDIATE));
    }

    private static List<String> changed(Map<String, Kept> before, Map<String, Kept> after) {
        return after.entrySet().stream()
                .filter(kept -> !kept.getValue().equals(before.get(kept.getKey())))
                .map(Map.Entry::getKey)
                .toList();
    }
}
