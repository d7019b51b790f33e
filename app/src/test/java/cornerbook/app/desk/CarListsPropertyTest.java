package cornerbook.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.store.Migrations;
import cornerbook.app.book.verdict.Gravest;
import cornerbook.app.book.visit.Because;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.door.JavaProcess;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Semaphore;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteConfig.TransactionMode;

/** What the book keeps of verdicts is what judging the car anew gives, or is known to be old. */
class CarListsPropertyTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final int CHANGES = 10;
    private static final String FORM_BEFORE_VERDICTS = "43";
    private static final List<CarHistory> CARS = DemoShop.histories(TODAY).subList(0, 3);

    @TempDir
    private Path folder;

    /** A clock that a test sets on. */
    private static final class Days extends Clock {
        private Instant now = TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC);

        @Override
        public ZoneOffset getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    /** In whatever order readings, corrections, data, visits, days, learned figures and the climate change. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aVerdictIsThatOfJudgingAnewOrSaysThatItIsOld(long seed) {
        var random = new Random(seed);
        var clock = new Days();
        try (var book = Book.open(folder)) {
            book.records().addCars(CARS);
            var learning = new Learning(book, new Assessor(LimitsFile.load()), clock);
            var lists = new CarLists(book, learning, clock);
            lists.judgeOld();
            assertAllCurrent(book, "at first");
            int changed = 0;
            for (int i = 0; i < CHANGES; i++) {
                var before = judgedAnew(book);
                var what = change(book, learning, clock, random, i);
                assertNoneWrongUnsaid(book, what);
                lists.judgeOld();
                assertAllCurrent(book, what);
                changed += judgedAnew(book).equals(before) ? 0 : 1;
            }
            assertThat(changed).as("changes that changed a verdict").isPositive();
        }
    }

    private static String change(Book book, Learning learning, Days clock, Random random, int number) {
        var car = book.cars()
                .find(CARS.get(random.nextInt(CARS.size())).vehicle().id())
                .orElseThrow();
        var last = car.visits().getLast();
        switch (random.nextInt(8)) {
            case 0, 1 -> {
                book.readings().add(last.id(), List.of(depth(last, random, "stored-" + number, null)));
                return "a reading stored";
            }
            case 2 -> {
                var wrong = depth(last, random, "wrong-" + number, null);
                book.readings().add(last.id(), List.of(wrong));
                book.readings().add(last.id(), List.of(depth(last, random, "right-" + number, wrong.id())));
                return "a reading corrected";
            }
            case 3 -> {
                var id = car.vehicle().id();
                book.cars()
                        .change(
                                moved(car, random.nextBoolean() ? "CA-ON" : "US-VT"),
                                book.cars().findRevision(id).orElseThrow(),
                                TODAY);
                return "the car's data changed";
            }
            case 4 -> {
                clock.now = clock.now.plus(Duration.ofDays(1 + random.nextInt(200)));
                return "a new day";
            }
            case 5 -> {
                // As another process does: nobody tells this one.
                book.knowledge().learn(TODAY.plusDays(number));
                return "learned";
            }
            case 6 -> {
                if (book.climate().find().isPresent()) {
                    book.climate().remove();
                } else {
                    book.climate().put(DemoShop.climate());
                }
                learning.readAnew();
                return "another climate";
            }
            default -> {
                if (car.visits().size() > 2) {
                    book.visits().cancel(last.id(), new Because(null, "Another car", "Ada", TODAY));
                }
                return "a visit cancelled";
            }
        }
    }

    private static Reading depth(Visit visit, Random random, String id, @Nullable String corrects) {
        var tenths = 5 + random.nextInt(50);
        var tag = visit.arrivedOn().get(Corner.LF);
        return new Reading(
                id,
                Measure.TREAD_DEPTH,
                Corner.LF,
                tag,
                Spot.CENTRE,
                tenths / 10.0,
                tenths / 10 + "." + tenths % 10 + " mm",
                corrects,
                corrects == null ? null : "misread");
    }

    private static CarHistory moved(CarHistory car, String jurisdiction) {
        var was = car.vehicle();
        var vehicle = new Vehicle(
                was.id(),
                was.name(),
                was.plate(),
                was.vin(),
                was.drive(),
                was.drivesElectric(),
                jurisdiction,
                was.front(),
                was.rear(),
                was.fastener(),
                was.battery(),
                was.brakeFluid(),
                was.details());
        return new CarHistory(vehicle, car.customer(), car.sets(), car.visits());
    }

    /** Of each car, by an assessor that is made for it of what the book has now. */
    private static List<Optional<Gravest>> judgedAnew(Book book) {
        var assessor = new Assessor(LimitsFile.load())
                .with(book.knowledge().read())
                .in(book.climate().find().orElse(null));
        var judged = new ArrayList<Optional<Gravest>>();
        for (var car : CARS) {
            var history = book.cars().find(car.vehicle().id()).orElseThrow();
            judged.add(Gravest.of(
                    assessor.findings(history, history.visits().getLast().id())));
        }
        return judged;
    }

    private static void assertNoneWrongUnsaid(Book book, String what) {
        var anew = judgedAnew(book);
        for (int i = 0; i < CARS.size(); i++) {
            var kept = book.verdicts().find(CARS.get(i).vehicle().id()).orElseThrow();
            assertThat(kept.isOld() || Optional.ofNullable(kept.gravest()).equals(anew.get(i)))
                    .as("after %s: %s, judged anew %s", what, kept, anew.get(i))
                    .isTrue();
        }
    }

    private static void assertAllCurrent(Book book, String what) {
        assertThat(book.verdicts().listOld(10)).as(what).isEmpty();
        assertNoneWrongUnsaid(book, what);
    }

    /** A book of the version before has none; its first list says so, and the background fills them in. */
    @Test
    void aBookOfAnOlderVersionGetsItsVerdictsInTheBackground() throws Exception {
        writeOlderBook();
        try (var book = Book.open(folder)) {
            assertThat(book.cars().list()).hasSize(CARS.size()).allSatisfy(car -> {
                assertThat(car.verdict().judgedAt()).isNull();
                assertThat(car.verdict().isOld()).isTrue();
            });
            var clock = new Days();
            try (var lists = new CarLists(book, new Learning(book, new Assessor(LimitsFile.load()), clock), clock)) {
                lists.start();
                waitUntilNoneIsOld(book);
            }
            assertAllCurrent(book, "an upgrade");
            var plate = CARS.getLast().vehicle().plate();
            assertThat(book.search().find(plate, 0, 10).cars())
                    .extracting(VehicleSummary::plate)
                    .containsExactly(plate);
            assertThat(book.check()).isEmpty();
        }
    }

    /** The cars of a book of this version, put into one of the form that knew nothing of verdicts yet. */
    private void writeOlderBook() throws IOException {
        var now = folder.resolve("now");
        try (var book = Book.open(now)) {
            book.records().addCars(CARS);
        }
        var older = Files.createFile(folder.resolve(BookFile.NAME));
        var source = BookFile.source(older, TransactionMode.IMMEDIATE);
        Flyway.configure()
                .configuration(Migrations.of(source, "sqlite").getConfiguration())
                .target(FORM_BEFORE_VERDICTS)
                .load()
                .migrate();
        try (var handle = Jdbi.open(source)) {
            handle.execute("pragma foreign_keys = off");
            handle.execute(
                    "attach database ? as later", now.resolve(BookFile.NAME).toString());
            for (var table : names(handle, "select name from main.sqlite_schema where type = 'table'")) {
                var columns = names(handle, "select name from pragma_table_info(?, 'later')", table);
                columns.retainAll(names(handle, "select name from pragma_table_info(?, 'main')", table));
                if (!table.equals("flyway_schema_history") && !columns.isEmpty()) {
                    var list = String.join(", ", columns);
                    handle.execute("delete from main." + table);
                    handle.execute(
                            "insert into main.%s (%s) select %s from later.%s".formatted(table, list, list, table));
                }
            }
        }
    }

    private static List<String> names(Handle handle, String query, Object... values) {
        return new ArrayList<>(handle.select(query, values).mapTo(String.class).list());
    }

    private static void waitUntilNoneIsOld(Book book) throws InterruptedException {
        for (int i = 0; i < 2400 && !book.verdicts().listOld(1).isEmpty(); i++) {
            Thread.sleep(50);
        }
    }

    /** After a restart all is there, and nothing is judged that the same program has judged. */
    @Test
    void aRestartJudgesNothingAnew() {
        var clock = new Days();
        try (var book = Book.open(folder)) {
            book.records().addCars(CARS);
            new CarLists(book, new Learning(book, new Assessor(LimitsFile.load()), clock), clock).judgeOld();
        }
        try (var book = Book.open(folder)) {
            new Learning(book, new Assessor(LimitsFile.load()), clock);
            assertAllCurrent(book, "a restart");
            // Another program has other limits: what it would judge nobody knows yet.
            var limits = LimitsFile.load();
            new Learning(book, new Assessor(limits.subList(0, limits.size() - 1)), clock);
            assertThat(book.verdicts().listOld(10)).hasSize(CARS.size());
        }
    }

    /** In a small book after each visit; in a big one seldom, for all its verdicts are old by it. */
    @Test
    void whatTakesLongToLearnIsLearnedSeldom() {
        assertThat(Learning.pauseAfter(Duration.ofMillis(300).toNanos())).isZero();
        assertThat(Duration.ofNanos(Learning.pauseAfter(Duration.ofSeconds(9).toNanos())))
                .isBetween(Duration.ofMinutes(30), Duration.ofHours(2));
    }

    /** Whoever judges is killed in the middle: what was judged is there and right, and the next one judges the rest. */
    @Test
    void aProcessThatIsKilledWhileItJudgesLeavesNothingWrong() throws Exception {
        try (var book = Book.open(folder)) {
            book.records().addCars(DemoShop.histories(TODAY));
        }
        var temporary = Files.createDirectories(folder.resolve("temporary"));
        var process = JavaProcess.of(List.of("-Djava.io.tmpdir=" + temporary), Judging.class, folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        var said = process.inputReader().readLine();
        process.destroyForcibly().waitFor();
        assertThat(said).isEqualTo("some");
        try (var book = Book.open(folder)) {
            var old = book.verdicts().listOld(100);
            assertThat(old).hasSizeBetween(1, DemoShop.TOLD_CARS - 1);
            assertNoneWrongUnsaid(book, "a kill");
            var clock = new Days();
            new CarLists(book, new Learning(book, new Assessor(LimitsFile.load()), clock), clock).judgeOld();
            assertAllCurrent(book, "the next start");
            assertThat(book.check()).isEmpty();
        }
    }

    /** The process that gets killed. */
    static final class Judging {
        private Judging() {}

        public static void main(String[] arguments) throws InterruptedException {
            try (var book = Book.open(Path.of(arguments[0]))) {
                var clock = new Days();
                var learning = new Learning(book, new Assessor(LimitsFile.load()), clock);
                book.changes().listen(() -> {
                    System.out.println("some");
                    // The next handful is not begun before the kill.
                    new Semaphore(0).acquireUninterruptibly();
                });
                new CarLists(book, learning, clock).judgeOld();
                Thread.sleep(Long.MAX_VALUE);
            }
        }
    }
}
