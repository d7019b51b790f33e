package cornerbook.app.text;

import java.util.List;
import java.util.stream.Collectors;

/** A record of comma-separated values (RFC 4180). */
public final class CsvLine {
    private static final String END = "\r\n";

    private CsvLine() {}

    /** The fields with the end of the line; quoted where a field needs it (section 2, rules 5 to 7). */
    public static String of(List<String> fields) {
        return fields.stream().map(CsvLine::field).collect(Collectors.joining(",", "", END));
    }

    private static String field(String text) {
        boolean plain = text.chars().noneMatch(each -> each == ',' || each == '"' || each == '\n' || each == '\r');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
