package cornerbook.app.text;

import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Tells text that every book can keep and every page can show from what cannot: half of a surrogate pair, which is no Unicode
 * text and which PostgreSQL refuses, NUL and other control characters, and U+FFFE and U+FFFF (XML 1.0, section 2.2). Asked
 * at each edge, so that both kinds of book take the same.
 */
public final class PlainText {
    private static final int LONGEST_SHOWN = 60;

    private PlainText() {}

    /** The first character that cannot stand in a text of one line; empty when all can. */
    public static Optional<UnfitCharacter> findUnfit(String line) {
        return find(line, PlainText::isUnfit);
    }

    /** The same in a text of several lines, which may have tabs, and what else XML lets stand, too. */
    public static Optional<UnfitCharacter> findUnfitInLines(String text) {
        return find(text, point -> isNoText(point) || (point < ' ' && "\t\n\r".indexOf(point) < 0));
    }

    /** What a stranger may have sent, as a sentence can hold it: on one line, without such characters, and not long. */
    public static String shown(String text) {
        var line = text.replaceAll("\\s+", " ").strip();
        var fit = line.codePoints()
                .filter(point -> !isUnfit(point))
                .limit(LONGEST_SHOWN)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append);
        return line.codePointCount(0, line.length()) > LONGEST_SHOWN
                ? fit.append('…').toString()
                : fit.toString();
    }

    private static Optional<UnfitCharacter> find(String text, IntPredicate unfit) {
        int point;
        for (int place = printable(text); place < text.length(); place += Character.charCount(point)) {
            point = text.codePointAt(place);
            if ((point < ' ' || point > '~') && unfit.test(point)) {
                return Optional.of(new UnfitCharacter("U+%04X".formatted(point)));
            }
        }
        return Optional.empty();
    }

    /** How many printable ASCII it begins with: a file of a car has some thousand texts, and nearly all are nothing else. */
    private static int printable(String text) {
        int place = 0;
        while (place < text.length() && text.charAt(place) >= ' ' && text.charAt(place) <= '~') {
            place++;
        }
        return place;
    }

    private static boolean isUnfit(int point) {
        return Character.isISOControl(point) || isNoText(point);
    }

    private static boolean isNoText(int point) {
        return (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE)
                || point == 0xFFFE
                || point == 0xFFFF;
    }
}
