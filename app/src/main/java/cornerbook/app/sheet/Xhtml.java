package cornerbook.app.sheet;

import java.text.Normalizer;
import java.util.List;

/** Writes XHTML text; every word from outside is escaped, and characters that XML does not allow are left out. */
final class Xhtml {
    private final StringBuilder text = new StringBuilder(16_384);

    /** Adds markup as it stands. */
    Xhtml raw(String markup) {
        text.append(markup);
        return this;
    }

    /** Adds an element that holds only words; its opening is the name, with attributes if it has any. */
    Xhtml element(String opening, String words) {
        var name = opening.split(" ", 2)[0];
        return raw("<" + opening + ">").text(words).raw("</" + name + ">\n");
    }

    /** Adds words; all of them in the wide typeface when the house's lacks one of their letters. */
    Xhtml text(String words) {
        var escaped = escape(words);
        return raw(SheetFonts.houseHas(escaped) ? escaped : "<span class=\"wide\">" + escaped + "</span>");
    }

    /** Adds a list of words, the first few of them, and says how many were left out. */
    Xhtml list(List<String> items, int most) {
        raw("<ul>");
        items.stream().limit(most).forEach(item -> element("li", item));
        if (items.size() > most) {
            element("li", more(items.size() - most));
        }
        return raw("</ul>\n");
    }

    /** Adds one row of a table; its first cell is its heading. */
    Xhtml row(String heading, List<String> cells) {
        raw("<tr><th scope=\"row\">").text(heading).raw("</th>");
        cells.forEach(cell -> element("td", cell));
        return raw("</tr>\n");
    }

    static String more(int count) {
        return "and %d more; the shop has all of them on its screen".formatted(count);
    }

    /** Cuts words that are longer than a line or three. */
    static String shorten(String words, int longest) {
        return words.codePointCount(0, words.length()) <= longest
                ? words
                : words.substring(0, words.offsetByCodePoints(0, longest - 1)).strip() + "…";
    }

    /** A picture with its description where the renderer looks for it, in the attribute alt. */
    static String described(String svg) {
        return svg.replaceFirst("aria-label=(\"[^\"]*\")", "aria-label=$1 alt=$1");
    }

    static String escape(String words) {
        var escaped = new StringBuilder(words.length() + 16);
        // A letter and its accent as one character: that is the one which typefaces have.
        Normalizer.normalize(words, Normalizer.Form.NFC).codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\n', '\r', '\t' -> escaped.append(' ');
                default -> {
                    if (point >= ' '
                            && point != 0xFFFE
                            && point != 0xFFFF
                            && Character.getType(point) != Character.CONTROL
                            && Character.getType(point) != Character.SURROGATE) {
                        escaped.appendCodePoint(point);
                    }
                }
            }
        });
        return escaped.toString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
