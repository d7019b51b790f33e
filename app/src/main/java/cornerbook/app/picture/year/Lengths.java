package cornerbook.app.picture.year;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import java.util.List;
import java.util.stream.Collectors;

/** Numbers side by side: a name, a length and the number on each line, so that it is read and compared at once. */
public final class Lengths {
    private static final int WIDTH = 420;
    private static final int LINE = 24;
    private static final double LEAST_NAME_WIDTH = 90;
    private static final double MOST_NAME_WIDTH = 240;
    /** Of a letter on average, the widest of the two languages. */
    private static final double LETTER_WIDTH = 7.4;

    private static final double NUMBER_WIDTH = 70;
    private static final double THICK = 12;
    private static final double LETTERS = 13;

    private Lengths() {}

    /**
     * A line.
     *
     * @param value 0 or more, what the length is
     * @param said the same as people write it
     * @param ahead of something that is still to come
     */
    public record Line(String name, double value, String said, boolean ahead) {}

    /** Draws the lines in their order. */
    public static String svg(String title, List<Line> lines) {
        var svg = new Svg(
                WIDTH,
                Math.max(1, lines.size()) * LINE,
                title + ": "
                        + lines.stream()
                                .map(line -> line.name() + " " + line.said())
                                .collect(Collectors.joining("; ")));
        double most = lines.stream().mapToDouble(Line::value).max().orElse(0);
        double names = Math.clamp(
                8
                        + LETTER_WIDTH
                                * lines.stream()
                                        .mapToInt(line -> line.name().length())
                                        .max()
                                        .orElse(0),
                LEAST_NAME_WIDTH,
                MOST_NAME_WIDTH);
        double room = WIDTH - names - NUMBER_WIDTH;
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i);
            double middle = i * LINE + LINE / 2.0;
            double length = most > 0 ? room * line.value() / most : 0;
            svg.words(names - 8, middle + LETTERS / 3, LETTERS, Anchor.END, Palette.INK, false, line.name());
            svg.line(names, middle - LINE / 2.0, names, middle + LINE / 2.0, Palette.SLATE, 1, "");
            if (length > 0) {
                svg.rectangle(
                        names,
                        middle - THICK / 2,
                        length,
                        THICK,
                        0,
                        line.ahead() ? Palette.BAND : Palette.SLATE,
                        Palette.SLATE);
            }
            svg.words(names + length + 8, middle + LETTERS / 3, LETTERS, Anchor.START, Palette.INK, true, line.said());
        }
        return svg.close();
    }
}
