package cornerbook.app.limits;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.visit.Limit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** Reads the limits file that the program brings along. */
public final class LimitsFile {
    private static final String RESOURCE = "limits.csv";
    private static final int COLUMNS = 7;

    private LimitsFile() {}

    /** All rows of the file. */
    public static List<Limit> load() {
        try (InputStream stream = LimitsFile.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its file " + RESOURCE);
            }
            return parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The rows of a CSV text with a head line.
     *
     * @throws IllegalArgumentException naming line and column of what does not fit
     */
    static List<Limit> parse(String csv) {
        var mapper = CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        var limits = new ArrayList<Limit>();
        try (MappingIterator<String[]> rows = mapper.readerFor(String[].class).readValues(csv)) {
            for (int line = 1; rows.hasNext(); line++) {
                var cells = rows.next();
                if (line > 1) {
                    limits.add(row(line, List.of(cells)));
                }
            }
        } catch (JacksonException e) {
            throw new IllegalArgumentException("the limits file is not CSV: " + e.getOriginalMessage(), e);
        }
        return List.copyOf(limits);
    }

    private static Limit row(int line, List<String> cells) {
        if (cells.size() != COLUMNS) {
            throw bad(line, "row", cells.size() + " columns", COLUMNS + " columns");
        }
        if (cells.get(6).isBlank()) {
            throw bad(line, "citation", "nothing", "where the limit comes from");
        }
        try {
            return new Limit(
                    cells.get(0),
                    Limit.Kind.valueOf(cells.get(1)),
                    cells.get(2).isEmpty() ? null : SeasonKind.valueOf(cells.get(2)),
                    value(line, cells.get(3)),
                    day(cells.get(4)),
                    day(cells.get(5)),
                    cells.get(6));
        } catch (IllegalArgumentException | java.time.DateTimeException e) {
            throw new IllegalArgumentException("limits file line %d: %s".formatted(line, e.getMessage()), e);
        }
    }

    private static double value(int line, String cell) {
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            throw bad(line, "value", "\"" + cell + "\"", "a number");
        }
    }

    private static @Nullable MonthDay day(String cell) {
        return cell.isEmpty() ? null : MonthDay.parse("--" + cell);
    }

    private static IllegalArgumentException bad(int line, String column, String was, String expected) {
        return new IllegalArgumentException(
                "limits file line %d, %s: %s, expected %s".formatted(line, column, was, expected));
    }
}
