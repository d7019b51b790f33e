package cornerbook.app.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.Notes;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.visit.Because;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tables of an invented book, as an independent reader (DuckDB) reads them, against the book. */
class TableFilesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Because WRONG = new Because(null, "the wrong corner", "Ilse Vantour", TODAY);

    @TempDir
    private Path folder;

    private Book book;
    private final List<CarHistory> histories = DemoShop.histories(TODAY);

    @BeforeEach
    void fillTheBook() {
        book = EmptyBook.open(folder.resolve("book"));
        book.records().addCars(histories.subList(1, histories.size()));
        book.records().add(List.<CarRecord>of(new Notes(4).ofCar(histories.getFirst())));
    }

    @AfterEach
    void close() {
        book.close();
    }

    private Path write(TableForm form, boolean withNames) throws IOException {
        var made = folder.resolve(form + "-" + withNames);
        TableFiles.makeFolder(book, made, form, withNames, (done, all) -> {});
        return made;
    }

    /** Each row as its cells with a bar between. */
    private static List<String> ask(Path tables, String query) throws SQLException {
        var rows = new ArrayList<String>();
        try (var duck = DriverManager.getConnection("jdbc:duckdb:");
                var found = duck.createStatement()
                        .executeQuery(query.replaceAll("<(\\w+)>", "read_parquet('" + tables + "/$1.parquet')"))) {
            int columns = found.getMetaData().getColumnCount();
            while (found.next()) {
                var cells = new ArrayList<String>();
                for (int i = 1; i <= columns; i++) {
                    cells.add(String.valueOf(found.getObject(i)));
                }
                rows.add(String.join("|", cells));
            }
        }
        return rows;
    }

    private Stream<Reading> readings() {
        return histories.stream().flatMap(car -> car.visits().stream()).flatMap(visit -> visit.readings().stream());
    }

    @Test
    void countsAndSumsAreThoseOfTheBook() throws Exception {
        var tables = write(TableForm.PARQUET, false);
        var byMeasure = readings().collect(Collectors.groupingBy(Reading::measure));
        var asked = ask(tables, "select measure, count(*), sum(value) from <readings> group by measure");
        assertThat(asked).hasSameSizeAs(byMeasure.keySet()).hasSizeGreaterThan(30);
        for (var row : asked) {
            var cells = row.split("\\|", -1);
            var ofMeasure = Objects.requireNonNull(byMeasure.get(Measure.valueOf(cells[0])));
            assertThat(Long.parseLong(cells[1])).as(row).isEqualTo(ofMeasure.size());
            assertThat(Double.parseDouble(cells[2]))
                    .as(row)
                    .isCloseTo(ofMeasure.stream().mapToDouble(Reading::value).sum(), Percentage.withPercentage(1e-9));
        }
        assertThat(ask(tables, "select count(*), sum(odometer_km) from <visits>"))
                .containsExactly("%s|%s"
                        .formatted(
                                histories.stream()
                                        .mapToInt(car -> car.visits().size())
                                        .sum(),
                                histories.stream()
                                        .flatMap(car -> car.visits().stream())
                                        .mapToDouble(visit -> visit.odometerKm())
                                        .sum()));
        assertThat(ask(tables, "select count(*) from <cars>")).containsExactly(String.valueOf(histories.size()));
        assertThat(ask(tables, "select count(*) from <wheels>"))
                .containsExactly(String.valueOf(histories.stream()
                        .flatMap(car -> car.sets().stream())
                        .mapToInt(set -> set.wheels().size())
                        .sum()));
    }

    @Test
    void aReadingIsFoundWithItsCarVisitWheelAndUnit() throws Exception {
        var car = histories.get(3);
        var visit = car.visits().getLast();
        var reading = visit.readings().stream()
                .filter(each -> each.measure() == Measure.TREAD_DEPTH)
                .findFirst()
                .orElseThrow();
        var asked = ask(write(TableForm.PARQUET, true), """
            select c.plate, v.day, w.wheel_tag, r.wheel_tag, r.corner, r.spot, r.value, r.unit, r.word, r.as_written, r.state
            from <readings> r join <cars> c using (car) join <visits> v using (car, visit) join <wheels> w using (car, set, wheel)
            where r.reading_id = '%s'\
            """.formatted(reading.id()));
        assertThat(asked)
                .containsExactly(String.join(
                        "|",
                        car.vehicle().plate(),
                        visit.date().toString(),
                        reading.wheelTag(),
                        reading.wheelTag(),
                        String.valueOf(reading.corner()),
                        String.valueOf(reading.spot()),
                        String.valueOf(reading.value()),
                        "mm",
                        "null",
                        reading.asWritten(),
                        "COUNTS"));
    }

    @Test
    void whatBecameOfAReadingIsTold() throws Exception {
        var car = histories.get(2);
        var visit = car.visits().getFirst();
        var corner = Corner.LF;
        book.readings()
                .add(
                        visit.id(),
                        List.of(
                                pad("a", corner, 8.5, null),
                                pad("b", corner, 5.8, "a"),
                                pad("c", corner, 5.9, null),
                                pad("d", Corner.RF, 6, null)));
        book.readings().move(visit.id(), Set.of("d"), visit.id(), Corner.RR, true, WRONG);
        var last = car.visits().getLast();
        book.visits().cancel(last.id(), WRONG);

        var tables = write(TableForm.PARQUET, true);
        assertThat(
                        ask(
                                tables,
                                "select r.reading_id, r.state, r.value, c.reading_id from <readings> r left join <readings> c on c.car = r.car and c.visit = r.visit and c.reading = r.corrects where r.reading_id in ('a', 'b', 'c', 'd') order by 1"))
                .containsExactly("a|CORRECTED|8.5|null", "b|READ_AGAIN|5.8|a", "c|COUNTS|5.9|null", "d|MOVED|6.0|null");
        assertThat(ask(
                        tables,
                        "select distinct state from <readings> join <visits> using (car, visit) where cancelled"))
                .containsExactly("VISIT_CANCELLED");
    }

    private static Reading pad(String id, Corner corner, double millimetres, @Nullable String corrects) {
        return new Reading(
                id,
                Measure.PAD_THICKNESS,
                corner,
                null,
                Spot.INNER,
                millimetres,
                millimetres + " mm",
                corrects,
                corrects == null ? null : "misread");
    }

    /** Ids and marks of wheels may be made of the plate. */
    @Test
    void nobodyIsNamedUnlessItIsAskedFor() throws Exception {
        var said = new ArrayList<String>();
        for (var history : histories) {
            said.addAll(List.of(
                    history.vehicle().plate(),
                    history.vehicle().id(),
                    history.customer().name(),
                    String.valueOf(history.visits().getFirst().card().technician()),
                    history.sets().getFirst().wheels().getFirst().tag()));
        }
        var without = files(write(TableForm.CSV, false));
        var with = files(write(TableForm.CSV, true));
        assertThat(without).hasSameSizeAs(with).hasSize(5);
        for (var name : said) {
            assertThat(without).noneMatch(file -> cells(file).contains(name));
            assertThat(with).anyMatch(file -> cells(file).contains(name));
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.toList();
        }
    }

    private static Set<String> cells(Path file) {
        try {
            return new HashSet<>(Arrays.asList(Files.readString(file).split("[,\\r\\n]+", -1)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Both forms say the same: the other reader takes its own reading of the text. */
    @Test
    void textAndParquetSayTheSame() throws Exception {
        var parquet = write(TableForm.PARQUET, true);
        var csv = write(TableForm.CSV, true);
        for (var table : BookTables.ALL) {
            assertThat(ask(
                            parquet,
                            "select * from <%s> except select * from read_csv('%s/%s.csv', header = true, nullstr = '', columns = {%s})"
                                    .formatted(table.name(), csv, table.name(), types(table))))
                    .as(table.name())
                    .isEmpty();
        }
    }

    private static String types(BookTable<?> table) {
        return table.columns(true).stream()
                .map(column -> "'%s': '%s'"
                        .formatted(
                                column.name(),
                                switch (column.kind()) {
                                    case TEXT -> "varchar";
                                    case NUMBER -> "double";
                                    case WHOLE -> "integer";
                                    case FLAG -> "boolean";
                                    case DAY -> "date";
                                    case MOMENT -> "timestamptz";
                                }))
                .collect(Collectors.joining(", "));
    }

    @Test
    void theColumnsAreThoseThatAreDescribed() throws IOException {
        var described = Files.readString(Path.of("../docs/tables.md"));
        for (var table : BookTables.ALL) {
            var part = described.split("## `" + table.name() + "`", -1)[1].split("\n## ", -1)[0];
            assertThat(part.lines()
                            .filter(line -> line.startsWith("| `"))
                            .map(line -> line.split("[`|]", -1))
                            .map(cells -> cells[2] + " " + cells[4].strip()))
                    .as(table.name())
                    .containsExactlyElementsOf(table.columns().stream()
                            .map(each -> each.column().name() + " "
                                    + each.column().kind().name().toLowerCase(Locale.ROOT)
                                    + (each.personal() ? ", by --names" : ""))
                            .toList());
        }
    }

    @Test
    void theExampleIsAnswered() throws Exception {
        var example = Files.readString(Path.of("../docs/tables.md"))
                .split("## An example", -1)[1]
                .lines()
                .filter(line -> line.startsWith("    "))
                .collect(Collectors.joining("\n"));
        assertThat(example).contains("'tables/");
        assertThat(ask(write(TableForm.PARQUET, false), example.replace("'tables/", "'" + folder + "/PARQUET-false/")))
                .hasSizeGreaterThan(100);
    }

    @Test
    void whatFailsLeavesNothing() throws IOException {
        var target = folder.resolve("tables");
        assertThatThrownBy(() -> TableFiles.makeFolder(book, target, TableForm.PARQUET, false, (done, all) -> {
                    if (done == 3) {
                        throw new IllegalStateException("stopped");
                    }
                }))
                .isInstanceOf(IllegalStateException.class);
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(folder.resolve("book"));
        }
    }
}
