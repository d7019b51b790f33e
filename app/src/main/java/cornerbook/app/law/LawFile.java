package cornerbook.app.law;

import cornerbook.core.finding.Citation;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** Reads the files of this package: CSV with a head line, a citation in two columns. */
final class LawFile {
    private static final CsvMapper CSV = new CsvMapper();

    private LawFile() {}

    /** Each row by the names of its columns. */
    static List<Map<String, String>> rows(String name) {
        try (InputStream file = Objects.requireNonNull(LawFile.class.getResourceAsStream(name), name);
                MappingIterator<Map<String, String>> rows = CSV.readerFor(Map.class)
                        .with(CsvSchema.emptySchema().withHeader())
                        .readValues(file)) {
            return List.copyOf(rows.readAll());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String cell(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    static Citation citation(Map<String, String> row, String column) {
        return new Citation(cell(row, column), cell(row, column + " in French"));
    }
}
