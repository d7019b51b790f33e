package cornerbook.app.picture;

import cornerbook.words.Reader;
import java.util.stream.Stream;
import cornerbook.app.picture.Svg.Anchor;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** One value over another: two axes with their ticks and names, and under them what the marks mean, a line for each. */
public final class Plot {
    public static final double LEFT_X = 48;
    public static final double RIGHT_X = 404;
    public static final double TOP_Y = 28;
    public static final double BOTTOM_Y = 188;

    private static final int WIDTH = 420;
    private static final double LEGEND_Y = 250;
    private static final double LEGEND_LINE = 20;
    private static final int PIECES = 48;
    private static final int TICKS_ACROSS = 7;
    private static final int TICKS_UP = 6;

    /** What a line of the key stands beside. */
    public enum Mark {
        DOT,
        RING,
        DIAMOND,
        DASHES,
        AREA
    }

    /** A line under the picture. */
    public record Legend(Mark mark, String colour, String words) {}

    private final Axis across;
    private final Axis up;
    private final Svg svg;

    /** Opens it; both axes have to lie on {@link #LEFT_X} to {@link #RIGHT_X} and {@link #BOTTOM_Y} to {@link #TOP_Y}. */
    public Plot(String title, Axis across, Axis up, List<Legend> legend) {
        this.across = across;
        this.up = up;
        svg = new Svg(
                WIDTH,
                (int) (LEGEND_Y + LEGEND_LINE * (legend.size() - 1) + 12),
                described(title, legend.stream().map(Legend::words), across.reader()));
        double y = LEGEND_Y;
        for (var line : legend) {
            switch (line.mark()) {
                case DASHES -> svg.line(LEFT_X - 34, y - 4, LEFT_X - 6, y - 4, line.colour(), 2, "7 3");
                case AREA -> svg.rectangle(LEFT_X - 34, y - 11, 28, 13, 0, Palette.BAND, line.colour());
                default -> shape(line.mark(), LEFT_X - 16, y - 4, line.colour());
            }
            svg.words(LEFT_X + 4, y, 13, Anchor.START, line.colour(), line.mark() != Mark.AREA, line.words());
            y += LEGEND_LINE;
        }
    }

    
    /** A title with what stands in the picture. */
    static String described(String title, Stream<String> words, Reader reader) {
        return reader.labels("app/picture").of("described", "title", title, "words", words.collect(Collectors.joining(", ")));
    }

    /** The area up to a value, under everything that is drawn after it. */
    public Plot areaBelow(double value) {
        svg.rectangle(LEFT_X, up.place(value), RIGHT_X - LEFT_X, BOTTOM_Y - up.place(value), 0, Palette.BAND, "none");
        return this;
    }

    public Plot axes(String acrossWords, String upWords) {
        for (var tick : up.ticks(TICKS_UP)) {
            svg.line(LEFT_X, tick.place(), RIGHT_X, tick.place(), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 7, tick.place() + 4, 12, Anchor.END, Palette.INK, false, tick.words());
        }
        for (var tick : across.ticks(TICKS_ACROSS)) {
            svg.line(tick.place(), BOTTOM_Y, tick.place(), BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(tick.place(), BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, tick.words());
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(4, 14, 12, Anchor.START, Palette.INK, false, named(upWords, up));
        svg.words(RIGHT_X, BOTTOM_Y + 36, 12, Anchor.END, Palette.INK, false, named(acrossWords, across));
        return this;
    }

    private static String named(String words, Axis axis) {
        return axis.unit().isEmpty() ? words : words + ", " + axis.unit();
    }

    /** A line all over the picture at one value. */
    public Plot level(double value, String colour) {
        svg.line(LEFT_X, up.place(value), RIGHT_X, up.place(value), colour, 2, "7 3");
        return this;
    }

    /** A curve between two values across, in straight pieces. */
    public Plot curve(double from, double to, DoubleUnaryOperator value, String colour) {
        svg.path(
                IntStream.rangeClosed(0, PIECES)
                        .asDoubleStream()
                        .map(piece -> from + (to - from) * piece / PIECES)
                        .mapToObj(at ->
                                Svg.number(across.place(at)) + " " + Svg.number(up.place(value.applyAsDouble(at))))
                        .collect(Collectors.joining("L", "M", "")),
                "none",
                colour,
                3);
        return this;
    }

    /** A value with how far it may be off, either way. */
    public Plot error(double at, double value, double error, String colour) {
        double x = across.place(at);
        svg.line(x, up.place(value - error), x, up.place(value + error), colour, 2, "");
        DoubleStream.of(value - error, value + error)
                .map(up::place)
                .forEach(y -> svg.line(x - 6, y, x + 6, y, colour, 2, ""));
        return this;
    }

    /** A dashed line from a point down to the scale. */
    public Plot drop(double at, double value, String colour) {
        svg.line(across.place(at), up.place(value), across.place(at), BOTTOM_Y, colour, 1.5, "4 3");
        return this;
    }

    public Plot point(Mark mark, double at, double value, String colour) {
        shape(mark, across.place(at), up.place(value), colour);
        return this;
    }

    public String close() {
        return svg.close();
    }

    private void shape(Mark mark, double x, double y, String colour) {
        switch (mark) {
            case DOT -> svg.circle(x, y, 6, colour, Palette.PAPER, 1.5, "");
            case RING -> svg.circle(x, y, 5, Palette.PAPER, colour, 2.5, "");
            default ->
                svg.path(
                        "M%s %sL%s %sL%s %sL%s %sZ"
                                .formatted(
                                        Svg.number(x),
                                        Svg.number(y - 8),
                                        Svg.number(x + 8),
                                        Svg.number(y),
                                        Svg.number(x),
                                        Svg.number(y + 8),
                                        Svg.number(x - 8),
                                        Svg.number(y)),
                        colour,
                        Palette.PAPER,
                        1.5);
        }
    }
}
