package cornerbook.app.limits;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Citation;
import cornerbook.core.finding.Limit;
import cornerbook.core.quantity.Quoted;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** Reads the limits file that the program brings along. */
public final class LimitsFile {
    private static final String RESOURCE = "limits.csv";
    private static final List<String> COLUMNS =
            List.of("jurisdiction", "kind", "season", "value", "from", "until", "citation", "citation in French");

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
                if (line == 1) {
                    checkHead(List.of(cells));
                } else {
                    add(row(line, List.of(cells)), line, limits);
                }
            }
        } catch (JacksonException e) {
            throw new IllegalArgumentException("the limits file is not CSV: " + e.getOriginalMessage(), e);
        }
        return List.copyOf(limits);
    }

    private static void checkHead(List<String> cells) {
        if (!cells.equals(COLUMNS)) {
            throw bad(1, "head", Quoted.of(String.join(",", cells)).toString(), String.join(",", COLUMNS));
        }
    }

    /** Two rows for the same place, kind and season would leave open which one binds. */
    private static void add(Limit row, int line, List<Limit> limits) {
        if (limits.stream()
                .anyMatch(other -> other.jurisdiction().equals(row.jurisdiction())
                        && other.kind() == row.kind()
                        && other.season() == row.season())) {
            throw bad(line, "row", "a second one of its place, kind and season", "one");
        }
        limits.add(row);
    }

    private static Limit row(int line, List<String> cells) {
        if (cells.size() != COLUMNS.size()) {
            throw bad(line, "row", cells.size() + " columns", COLUMNS.size() + " columns");
        }
        var from = day(line, "from", cells.get(4));
        var until = day(line, "until", cells.get(5));
        if ((from == null) != (until == null)) {
            throw bad(line, from == null ? "from" : "until", "nothing", "both days or none");
        }
        var kind = word(line, "kind", Limit.Kind.class, cells.get(1));
        double value = value(line, cells.get(3));
        if (kind == Limit.Kind.SEIZING_RISK && value >= 1) {
            throw bad(line, "value", Quoted.of(cells.get(3)).toString(), "a chance above 0 and below 1");
        }
        var season = cells.get(2).isEmpty() ? null : word(line, "season", SeasonKind.class, cells.get(2));
        return new Limit(
                text(line, "jurisdiction", cells.get(0), "a code as CA-QC, or *"),
                kind,
                season,
                value,
                from,
                until,
                new Citation(
                        text(line, COLUMNS.get(6), cells.get(6), "where the limit comes from"),
                        text(line, COLUMNS.get(7), cells.get(7), "the same in French")));
    }

    private static String text(int line, String column, String cell, String expected) {
        if (cell.isBlank()) {
            throw bad(line, column, "nothing", expected);
        }
        return cell;
    }

    private static <E extends Enum<E>> E word(int line, String column, Class<E> words, String cell) {
        return Arrays.stream(words.getEnumConstants())
                .filter(word -> word.name().equals(cell))
                .findFirst()
                .orElseThrow(() -> bad(
                        line,
                        column,
                        Quoted.of(cell).toString(),
                        "one of " + Arrays.toString(words.getEnumConstants())));
    }

    private static double value(int line, String cell) {
        try {
            double value = Double.parseDouble(cell);
            if (value > 0 && Double.isFinite(value)) {
                return value;
            }
            throw bad(line, "value", Quoted.of(cell).toString(), "a number above 0");
        } catch (NumberFormatException e) {
            throw bad(line, "value", Quoted.of(cell).toString(), "a number");
        }
    }

    private static @Nullable MonthDay day(int line, String column, String cell) {
        try {
            return cell.isEmpty() ? null : MonthDay.parse("--" + cell);
        } catch (DateTimeParseException e) {
            throw bad(line, column, Quoted.of(cell).toString(), "month and day as 12-01");
        }
    }

    private static IllegalArgumentException bad(int line, String column, Object was, String expected) {
        return new IllegalArgumentException(
                "limits file line %s, %s: %s, expected %s".formatted(line, column, was, expected));
    }
}
