package cornerbook.app.parquet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.parquet.ParquetColumn.Kind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is what an independent reader (DuckDB) reads back, value by value. */
class ParquetReferenceTest {
    private static final List<ParquetColumn> COLUMNS = List.of(
            new ParquetColumn("word", Kind.TEXT),
            new ParquetColumn("id", Kind.TEXT),
            new ParquetColumn("amount", Kind.NUMBER),
            new ParquetColumn("count", Kind.WHOLE),
            new ParquetColumn("flag", Kind.FLAG),
            new ParquetColumn("day", Kind.DAY),
            new ParquetColumn("moment", Kind.MOMENT),
            new ParquetColumn("never", Kind.TEXT),
            new ParquetColumn("always", Kind.TEXT));

    private static final List<String> WORDS = List.of("", "free", "tight", "é “冬” \n,;\"'", "x".repeat(300));

    @TempDir
    private Path folder;

    /** From none to more than a row group; 7, 8 and 9 stand around a whole group of packed bits. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 7, 8, 9, 1000, ParquetWriter.ROWS_OF_GROUP, ParquetWriter.ROWS_OF_GROUP + 3})
    void anotherReaderReadsTheSameRows(int count) throws IOException, SQLException {
        var random = new Random(count);
        var rows = new ArrayList<@Nullable Object[]>();
        for (int i = 0; i < count; i++) {
            rows.add(row(random, i));
        }
        var file = folder.resolve("table.parquet");
        try (OutputStream out = Files.newOutputStream(file)) {
            write(out, rows).finish();
        }
        assertThat(read(file)).isEqualTo(rows.stream().map(Arrays::asList).toList());
    }

    private static @Nullable Object[] row(Random random, int number) {
        var row = new @Nullable Object[] {
            WORDS.get(random.nextInt(WORDS.size())),
            "row-" + number,
            random.nextInt(5) == 0 ? -0.1 - number : random.nextGaussian() * Math.pow(10, random.nextInt(40) - 20),
            random.nextInt(),
            random.nextBoolean(),
            LocalDate.EPOCH.plusDays(random.nextInt(40_000) - 10_000),
            Instant.ofEpochSecond(random.nextInt(), 1000L * random.nextInt(1_000_000)),
            null,
            "the same"
        };
        for (int i = 0; i < row.length - 1; i++) {
            if (random.nextInt(4) == 0) {
                row[i] = null;
            }
        }
        return row;
    }

    private static ParquetWriter write(OutputStream out, List<@Nullable Object[]> rows) throws IOException {
        var writer = new ParquetWriter(out, COLUMNS);
        for (var row : rows) {
            writer.add(row);
        }
        return writer;
    }

    private static List<List<@Nullable Object>> read(Path file) throws SQLException {
        var rows = new ArrayList<List<@Nullable Object>>();
        try (var duck = DriverManager.getConnection("jdbc:duckdb:");
                var found = duck.createStatement()
                        .executeQuery("select * replace (epoch_us(moment) as moment) from read_parquet('%s')"
                                .formatted(file))) {
            while (found.next()) {
                var row = new @Nullable Object[COLUMNS.size()];
                for (int i = 0; i < row.length; i++) {
                    row[i] = value(COLUMNS.get(i).kind(), found.getObject(i + 1));
                }
                rows.add(Arrays.asList(row));
            }
        }
        return rows;
    }

    private static @Nullable Object value(Kind kind, @Nullable Object found) {
        return kind == Kind.MOMENT && found instanceof Long microseconds
                ? LocalDate.EPOCH
                        .atStartOfDay()
                        .toInstant(ZoneOffset.UTC)
                        .plusNanos(1000 * (microseconds % 1_000_000))
                        .plusSeconds(microseconds / 1_000_000)
                : found;
    }

    /** What a process that was killed leaves: its beginning, of whatever length. */
    @Test
    void theBeginningOfAFileIsNoFile() throws IOException {
        var whole = new ByteArrayOutputStream();
        write(whole, List.of(row(new Random(1), 0), row(new Random(2), 1))).finish();
        var bytes = whole.toByteArray();
        var part = folder.resolve("part.parquet");
        for (int length = 0; length < bytes.length; length += 37) {
            Files.write(part, Arrays.copyOf(bytes, length));
            assertThat(isRead(part)).as("%s of %s bytes", length, bytes.length).isFalse();
        }
        Files.write(part, bytes);
        assertThat(isRead(part)).isTrue();
    }

    private static boolean isRead(Path file) {
        try {
            return read(file).size() == 2;
        } catch (SQLException e) {
            return false;
        }
    }
}
