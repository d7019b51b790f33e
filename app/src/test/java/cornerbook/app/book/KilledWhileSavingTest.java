package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.door.JavaProcess;
import cornerbook.app.exchange.table.TableFiles;
import cornerbook.app.exchange.table.TableForm;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.sql.DriverManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KilledWhileSavingTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path folder;

    /** Another process saves readings one by one and says each that was acknowledged, until it is killed. */
    @ParameterizedTest
    @ValueSource(ints = {1, 17, 60})
    void everythingAcknowledgedIsThere(int acknowledgedBeforeKill) throws Exception {
        try (var book = Book.open(folder)) {
            book.records().addCars(DemoShop.histories(TODAY));
        }
        var acknowledged = killAfter(acknowledgedBeforeKill, Saver.class);
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(acknowledgedBeforeKill);
        try (var book = Book.open(folder)) {
            assertThat(book.check()).isEmpty();
            var visit = visitId();
            var kept =
                    book.cars().findOfVisit(visit).orElseThrow().getVisit(visit).readings();
            assertThat(kept).extracting(Reading::id).containsAll(acknowledged);
        }
    }

    /** Another process writes backup after backup, with photos, until it is killed: each that bears its name is whole. */
    @Test
    void backupThatBearsItsNameIsWhole() throws Exception {
        var record = new Notes(4).ofCar(DemoShop.histories(TODAY).getFirst());
        try (var book = Book.open(folder)) {
            book.records().add(List.of(record));
        }
        var acknowledged = killAfter(3, Backer.class);
        try (var files = Files.list(folder)) {
            var copies = files.filter(file -> file.getFileName().toString().startsWith("copy-"))
                    .toList();
            assertThat(copies).extracting(Path::toString).containsAll(acknowledged);
            for (var copy : copies) {
                var restored = folder.resolve("restored-" + copy.getFileName());
                Book.restore(copy, restored);
                try (var book = Book.open(restored)) {
                    assertThat(book.check()).isEmpty();
                    assertThat(book.records().find(record.history().vehicle().id()))
                            .contains(record);
                }
            }
        }
    }

    /** Another process restores a backup into folder after folder until it is killed: each book that is there is whole. */
    @Test
    void aRestoredBookIsWholeOrNotThere() throws Exception {
        var record = new Notes(4).ofCar(DemoShop.histories(TODAY).getFirst());
        try (var book = Book.open(folder)) {
            book.records().add(List.of(record));
            book.backup(folder.resolve("copy"));
        }
        var acknowledged = killAfter(3, Restorer.class);
        int there = 0;
        for (int i = 0; Files.exists(folder.resolve("restored-" + i)); i++) {
            var restored = folder.resolve("restored-" + i);
            assertThat(!acknowledged.contains(restored.toString()) || Book.isIn(restored))
                    .isTrue();
            if (Book.isIn(restored)) {
                there++;
                try (var book = Book.open(restored)) {
                    assertThat(book.check()).isEmpty();
                    assertThat(book.records().find(record.history().vehicle().id()))
                            .contains(record);
                }
            }
        }
        assertThat(there).isGreaterThanOrEqualTo(3);
    }

    /** Another process imports car after car until it is killed: each is in the book whole, or not at all. */
    @Test
    void anImportedCarIsWholeOrNotThere() throws Exception {
        var notes = new Notes(4);
        var records = DemoShop.histories(TODAY).stream().map(notes::ofCar).toList();
        var acknowledged = killAfter(5, Importer.class);
        try (var book = Book.open(folder)) {
            assertThat(book.check()).isEmpty();
            for (var record : records) {
                var id = record.history().vehicle().id();
                var kept = book.records().find(id);
                assertThat(kept.isPresent() || !acknowledged.contains(id)).isTrue();
                kept.ifPresent(found -> assertThat(found).isEqualTo(record));
            }
        }
    }

    /** Another process takes the tables out, folder after folder, until it is killed: each that bears its name has all of them, whole. */
    @Test
    void tablesThatBearTheirNameAreWhole() throws Exception {
        var cars = DemoShop.histories(TODAY);
        try (var book = Book.open(folder)) {
            book.records().addCars(cars);
        }
        long readings = cars.stream()
                .flatMap(car -> car.visits().stream())
                .mapToLong(visit -> visit.readings().size())
                .sum();
        var acknowledged = killAfter(3, Taker.class);
        try (var files = Files.list(folder);
                var duck = DriverManager.getConnection("jdbc:duckdb:")) {
            var made = files.filter(file -> file.getFileName().toString().matches("tables-\\d+"))
                    .toList();
            assertThat(made).extracting(Path::toString).containsAll(acknowledged);
            for (var each : made) {
                assertThat(list(each)).hasSize(5);
                try (var counted = duck.createStatement()
                        .executeQuery("select count(*) from read_parquet('%s/readings.parquet')".formatted(each))) {
                    assertThat(counted.next()).isTrue();
                    assertThat(counted.getLong(1)).isEqualTo(readings);
                }
            }
        }
    }

    /** What SQLite's driver of a killed process has left in the temporary folder is taken by the next one; that of a living one stays. */
    @Test
    void theDriverOfAKilledProcessIsTakenAway() throws Exception {
        try (var book = Book.open(folder)) {
            book.records().addCars(DemoShop.histories(TODAY));
        }
        var temporary = Files.createDirectory(folder.resolve("temporary"));
        killAfter(1, Saver.class);
        var left = list(temporary);
        assertThat(left).hasSize(1);
        killAfter(1, Saver.class);
        assertThat(list(temporary)).as("too young to be taken").hasSize(2).containsAll(left);
        for (var each : list(temporary)) {
            Files.setLastModifiedTime(each, FileTime.from(Instant.now().minusSeconds(120)));
        }
        var living = list(temporary).getFirst();
        try (var channel = FileChannel.open(living.resolve("in-use"), StandardOpenOption.WRITE)) {
            assertThat(channel.tryLock()).isNotNull();
            killAfter(1, Saver.class);
        }
        assertThat(list(temporary)).hasSize(2).contains(living);
    }

    private static List<Path> list(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    /** What the process acknowledged, line by line, until it had said so many and was killed. */
    private List<String> killAfter(int lines, Class<?> program) throws Exception {
        var said = folder.resolve("said");
        var temporary = Files.createDirectories(folder.resolve("temporary"));
        var process = JavaProcess.of(List.of("-Djava.io.tmpdir=" + temporary), program, folder.toString())
                .redirectOutput(said.toFile())
                .start();
        while (acknowledged(said).size() < lines && process.isAlive()) {
            Thread.sleep(5);
        }
        process.destroyForcibly().waitFor();
        return acknowledged(said);
    }

    /** The whole lines of what the process said. */
    private static List<String> acknowledged(Path said) throws IOException {
        if (Files.notExists(said)) {
            return List.of();
        }
        var text = Files.readString(said);
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }

    private static String visitId() {
        return DemoShop.histories(TODAY).getFirst().visits().getLast().id();
    }

    /** The process that gets killed. */
    static final class Saver {
        private Saver() {}

        public static void main(String[] arguments) {
            try (var book = Book.open(Path.of(arguments[0]))) {
                for (int i = 0; i < 100_000; i++) {
                    var id = "saved-" + i;
                    book.readings()
                            .add(
                                    visitId(),
                                    List.of(new Reading(
                                            id,
                                            Measure.BATTERY_VOLTAGE,
                                            null,
                                            null,
                                            null,
                                            12.5,
                                            "12.5 V",
                                            null,
                                            null)));
                    System.out.println(id);
                }
            }
        }
    }

    /** The process that gets killed while it backs up. */
    static final class Backer {
        private Backer() {}

        public static void main(String[] arguments) {
            var folder = Path.of(arguments[0]);
            try (var book = Book.open(folder)) {
                for (int i = 0; i < 100_000; i++) {
                    var copy = folder.resolve("copy-" + i);
                    book.backup(copy);
                    System.out.println(copy);
                }
            }
        }
    }

    /** The process that gets killed while it takes the tables out. */
    static final class Taker {
        private Taker() {}

        public static void main(String[] arguments) throws IOException {
            var folder = Path.of(arguments[0]);
            try (var book = Book.open(folder)) {
                for (int i = 0; i < 100_000; i++) {
                    var made = folder.resolve("tables-" + i);
                    TableFiles.makeFolder(book, made, TableForm.PARQUET, false, (done, all) -> {});
                    System.out.println(made);
                }
            }
        }
    }

    /** The process that gets killed while it restores. */
    static final class Restorer {
        private Restorer() {}

        public static void main(String[] arguments) {
            var folder = Path.of(arguments[0]);
            for (int i = 0; i < 100_000; i++) {
                var restored = folder.resolve("restored-" + i);
                Book.restore(folder.resolve("copy"), restored);
                System.out.println(restored);
            }
        }
    }

    /** The process that gets killed while it imports. */
    static final class Importer {
        private Importer() {}

        public static void main(String[] arguments) {
            var notes = new Notes(4);
            var records = DemoShop.histories(TODAY).stream().map(notes::ofCar).toList();
            try (var book = Book.open(Path.of(arguments[0]))) {
                for (var record : records) {
                    book.records().add(List.of(record));
                    System.out.println(record.history().vehicle().id());
                }
            }
        }
    }
}
