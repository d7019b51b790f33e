package cornerbook.app.cli;

import tools.jackson.databind.json.JsonMapper;

/** Makes text fit to be printed to a terminal. */
final class Printed {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private Printed() {}

    /** The text without control characters, which could steer the terminal, and without marks that turn its direction. */
    static String clean(String text) {
        var clean = new StringBuilder(text.length());
        text.codePoints().filter(point -> point == '\n' || !steers(point)).forEach(clean::appendCodePoint);
        return clean.toString();
    }

    /** The same in one line. */
    static String line(String text) {
        return clean(text.replace('\n', ' '));
    }

    /** The same with a full stop at its end. */
    static String sentence(String text) {
        var line = line(text).strip();
        return line.endsWith(".") ? line : line + ".";
    }

    /** A small answer as one line of JSON. */
    static String json(Object answer) {
        return clean(MAPPER.writeValueAsString(answer));
    }

    private static boolean steers(int point) {
        return Character.getType(point) == Character.CONTROL
                || (point >= 0x202A && point <= 0x202E)
                || (point >= 0x2066 && point <= 0x2069);
    }
}
