package cornerbook.app.sheet;

import java.text.Normalizer;

/** Words as a paper can hold them. */
public final class SheetText {
    /** As many as a tablet takes of a note: what a person wrote there stands whole. */
    private static final int LONGEST_LINE = 1000;

    private static final int LONGEST_NAME = 90;
    /** A figure keeps together with what follows it; the house's typeface has only the wider of the two. */
    private static final char NARROW_BLANK = '\u202f';

    private static final char BLANK = '\u00a0';

    private SheetText() {}

    /** What would fill a page, cut. */
    static String line(String words) {
        return shorten(words, LONGEST_LINE);
    }

    public static String name(String words) {
        return shorten(words, LONGEST_NAME);
    }

    /** Cuts words that are longer than a line or three. */
    public static String shorten(String words, int longest) {
        return words.codePointCount(0, words.length()) <= longest
                ? words
                : words.substring(0, words.offsetByCodePoints(0, longest - 1)).strip() + "…";
    }

    /** Without the characters that XML does not allow; a letter and its accent as one, which is what typefaces have. */
    static String printable(String text) {
        var printable = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .replace(NARROW_BLANK, BLANK)
                .codePoints()
                .filter(SheetText::isOfXml)
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private static boolean isOfXml(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL -> point == '\n' || point == '\t';
            case Character.SURROGATE -> false;
            default -> point != 0xFFFE && point != 0xFFFF;
        };
    }
}
