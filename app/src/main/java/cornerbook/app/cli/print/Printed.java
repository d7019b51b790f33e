package cornerbook.app.cli.print;

import cornerbook.app.book.store.ServerAddress;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/** Makes text fit to be printed to a terminal. */
public final class Printed {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private Printed() {}

    /**
     * The text in one line, without control characters, which could steer the terminal, without marks that turn its direction,
     * and without passwords in addresses; with plain blanks, for other programs to find words and numbers in it.
     */
    public static String line(String text) {
        return plain(cleaned(text));
    }

    private static String plain(String line) {
        return line.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    private static String cleaned(String text) {
        var line = new StringBuilder(text.length());
        ServerAddress.hideIn(text)
                .replace('\n', ' ')
                .codePoints()
                .filter(point -> !steers(point))
                .forEach(line::appendCodePoint);
        return line.toString();
    }

    /** The same with a full stop at its end. */
    public static String sentence(String text) {
        var line = line(text).strip();
        return line.endsWith(".") ? line : line + ".";
    }

    /**
     * The same in lines that are at most so wide, broken between words and never between a number and its unit; a word that is
     * wider stands alone.
     *
     * @param lead what the first line begins with; the others are indented as far
     */
    public static List<String> wrapped(String lead, String text, int width) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder(lead);
        boolean begun = false;
        for (var word : cleaned(text).split(" ", -1)) {
            if (begun && line.length() + 1 + word.length() > width) {
                lines.add(plain(line.toString()));
                line = new StringBuilder(" ".repeat(lead.length()));
                begun = false;
            }
            line.append(begun ? " " : "").append(word);
            begun = true;
        }
        lines.add(plain(line.toString()));
        return lines;
    }

    /** A small answer as one line of JSON. */
    public static String jsonOf(Object answer) {
        return json(MAPPER.writeValueAsString(answer));
    }

    /** JSON with such characters escaped, which only its strings can hold (RFC 8259, section 7); its value stays the same. */
    public static String json(String json) {
        var escaped = new StringBuilder(json.length());
        json.strip().codePoints().forEach(point -> {
            if (steers(point) && point != '\n') {
                escaped.append("\\u%04x".formatted(point));
            } else {
                escaped.appendCodePoint(point);
            }
        });
        return escaped.toString();
    }

    private static boolean steers(int point) {
        return Character.getType(point) == Character.CONTROL
                || (point >= 0x202A && point <= 0x202E)
                || (point >= 0x2066 && point <= 0x2069);
    }
}
