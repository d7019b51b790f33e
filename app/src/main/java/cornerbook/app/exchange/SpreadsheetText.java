package cornerbook.app.exchange;

import cornerbook.app.text.PlainText;
import cornerbook.core.say.Refused;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * The rows of a spreadsheet as text: saved as CSV (RFC 4180), with semicolons where the comma is a decimal mark, or copied out of
 * it, with tabs.
 */
public final class SpreadsheetText {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

    private SpreadsheetText() {}

    /**
     * Its rows as they stand, empty ones too.
     *
     * @throws Refused with one sentence when it is no such text
     */
    public static List<List<String>> parse(String text) {
        var plain = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        var mapper = CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        var schema = CsvSchema.emptySchema().withColumnSeparator(separator(plain));
        var rows = new ArrayList<List<String>>();
        try (MappingIterator<String[]> lines =
                mapper.readerFor(String[].class).with(schema).readValues(plain)) {
            lines.forEachRemaining(
                    cells -> rows.add(Stream.of(cells).map(String::strip).toList()));
        } catch (JacksonException e) {
            throw new Refused(new FileSaid.SpreadsheetUnread(PlainText.shown(String.valueOf(e.getOriginalMessage()))));
        }
        return rows;
    }

    /** These rows as such a text, with commas. */
    public static String write(Collection<List<String>> rows) {
        return CsvMapper.builder().build().writer(CsvSchema.emptySchema()).writeValueAsString(rows);
    }

    /** The one that the first line has most of. */
    private static char separator(String text) {
        var head = text.lines().findFirst().orElse("");
        return SEPARATORS.stream()
                .max((one, other) -> Long.compare(count(head, one), count(head, other)))
                .orElseThrow();
    }

    private static long count(String line, char separator) {
        return line.chars().filter(each -> each == separator).count();
    }
}
