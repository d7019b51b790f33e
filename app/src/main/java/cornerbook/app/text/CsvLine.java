package cornerbook.app.text;

import java.util.List;
import java.util.stream.Collectors;

/** One line of comma-separated values (RFC 4180). */
public final class CsvLine {
    private static final String END = "\r\n";

    private CsvLine() {}

    /** The fields with what ends the line. */
    public static String of(List<String> fields) {
        return fields.stream().map(CsvLine::field).collect(Collectors.joining(",")) + END;
    }

    /** RFC 4180, section 2, rules 5 to 7. */
    private static String field(String text) {
        return text.matches("(?s).*[\",\r\n].*") ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
