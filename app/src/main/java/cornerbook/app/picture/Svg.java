package cornerbook.app.picture;

import java.util.Locale;

/** Writes SVG text; coordinates in user units, one digit after the point. */
public final class Svg {
    private static final String FONT = "B612, sans-serif";
    private final StringBuilder text = new StringBuilder(2048);

    /** Where a text stands against its point. */
    public enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");
        private final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    /** Opens a picture that scales to the width it is given. */
    public Svg(int width, int height, String description) {
        text.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%s\" height=\"%s\" viewBox=\"0 0 %s %s\" role=\"img\" aria-label=\"%s\">"
                        .formatted(width, height, width, height, escape(description)));
    }

    public Svg path(String commands, String fill, String stroke, double strokeWidth) {
        text.append("<path d=\"").append(commands).append("\" fill=\"").append(fill);
        text.append("\" stroke=\"").append(stroke).append("\" stroke-width=\"").append(number(strokeWidth));
        text.append("\"/>");
        return this;
    }

    public Svg line(
            double fromX, double fromY, double toX, double toY, String stroke, double strokeWidth, String dashes) {
        text.append("<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"%s\" stroke-width=\"%s\""
                .formatted(number(fromX), number(fromY), number(toX), number(toY), stroke, number(strokeWidth)));
        if (!dashes.isEmpty()) {
            text.append(" stroke-dasharray=\"").append(dashes).append('"');
        }
        text.append("/>");
        return this;
    }

    public Svg rectangle(double x, double y, double width, double height, double radius, String fill, String stroke) {
        text.append(
                "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" rx=\"%s\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.5\"/>"
                        .formatted(number(x), number(y), number(width), number(height), number(radius), fill, stroke));
        return this;
    }

    public Svg circle(
            double x, double y, double radius, String fill, String stroke, double strokeWidth, String dashes) {
        text.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\" stroke=\"%s\" stroke-width=\"%s\""
                .formatted(number(x), number(y), number(radius), fill, stroke, number(strokeWidth)));
        if (!dashes.isEmpty()) {
            text.append(" stroke-dasharray=\"").append(dashes).append('"');
        }
        text.append("/>");
        return this;
    }

    public Svg words(double x, double y, double size, Anchor anchor, String fill, boolean bold, String words) {
        text.append(
                "<text x=\"%s\" y=\"%s\" font-family=\"%s\" font-size=\"%s\" font-weight=\"%s\" text-anchor=\"%s\" fill=\"%s\">%s</text>"
                        .formatted(
                                number(x),
                                number(y),
                                FONT,
                                number(size),
                                bold ? "700" : "400",
                                anchor.word,
                                fill,
                                escape(words)));
        return this;
    }

    /** The whole picture. */
    public String close() {
        return text + "</svg>";
    }

    public static String number(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : String.format(Locale.ROOT, "%.1f", tenths / 10.0);
    }

    /** Words as XML holds them, also between quotation marks. */
    public static String escape(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
