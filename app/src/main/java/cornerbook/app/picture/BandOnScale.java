package cornerbook.app.picture;

import cornerbook.words.Reader;
import cornerbook.app.picture.Svg.Anchor;
import java.util.List;

/** A band of values on a scale, with the values that it is held against. */
public final class BandOnScale {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 138;
    private static final double LEFT_X = 14;
    private static final double RIGHT_X = 406;
    private static final double TOP_Y = 58;
    private static final double BAR = 28;
    private static final double LEAST_WIDTH = 4;
    private static final double WORDS_ROOM = 70;

    private final double low;
    private final double high;

    private BandOnScale(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /** A value on the scale; its words stand above the bar or below it. */
    public record Mark(double value, String colour, boolean above, String words) {}

    /** From one value to another, in a colour. */
    public record Band(double from, double to, String colour) {}

    /** The picture of a scale from {@code low} to {@code high}. */
    public static String svg(String title, double low, double high, Band band, List<Mark> marks, Reader reader) {
        return new BandOnScale(low, high).draw(title, band, marks, reader);
    }

    private String draw(String title, Band band, List<Mark> marks, Reader reader) {
        var svg = new Svg(
                WIDTH, HEIGHT, Plot.described(title, marks.stream().map(Mark::words), reader));
        svg.words(LEFT_X, 18, 14, Anchor.START, Palette.INK, true, title);
        svg.rectangle(LEFT_X, TOP_Y, RIGHT_X - LEFT_X, BAR, 0, Palette.SHADE, Palette.HAIRLINE);
        double from = x(band.from());
        svg.rectangle(
                from, TOP_Y + 4, Math.max(LEAST_WIDTH, x(band.to()) - from), BAR - 8, 3, band.colour(), band.colour());
        for (var mark : marks) {
            double x = x(mark.value());
            double fromY = mark.above() ? TOP_Y - 10 : TOP_Y - 3;
            double toY = mark.above() ? TOP_Y + BAR + 3 : TOP_Y + BAR + 10;
            svg.line(x, fromY, x, toY, Palette.PAPER, 5, "");
            svg.line(x, fromY, x, toY, mark.colour(), 2, mark.above() ? "6 3" : "");
            var anchor = x < LEFT_X + WORDS_ROOM ? Anchor.START : x > RIGHT_X - WORDS_ROOM ? Anchor.END : Anchor.MIDDLE;
            svg.words(x, mark.above() ? TOP_Y - 15 : TOP_Y + BAR + 26, 13, anchor, mark.colour(), true, mark.words());
        }
        return svg.close();
    }

    private double x(double value) {
        return LEFT_X + (RIGHT_X - LEFT_X) * Math.clamp((value - low) / (high - low), 0, 1);
    }
}
