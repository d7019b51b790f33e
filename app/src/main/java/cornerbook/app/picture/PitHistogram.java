package cornerbook.app.picture;

import cornerbook.words.Reader;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Svg.Anchor;
import java.util.Arrays;

/** Histogram of where readings fell in their forecast, with the band that an honest forecast stays in. */
public final class PitHistogram {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 220;
    private static final double LEFT_X = 40;
    private static final double RIGHT_X = 405;
    private static final double TOP_Y = 34;
    private static final double BOTTOM_Y = 178;
    /** Standard normal quantile: 99 of 100 bins of an honest forecast stay inside. */
    private static final double BAND_Z = 2.5758;

    private PitHistogram() {}

    /** The picture. */
    public static String svg(String title, int[] counts, Reader reader) {
        int all = Arrays.stream(counts).sum();
        double expected = (double) all / counts.length;
        double bandSd = Math.sqrt(expected * (1 - 1.0 / counts.length));
        double highest = Math.max(Arrays.stream(counts).max().orElse(1), expected + BAND_Z * bandSd) * 1.1;
        double step = (RIGHT_X - LEFT_X) / counts.length;
        var svg = new Svg(WIDTH, HEIGHT, title)
                .rectangle(0, 0, WIDTH, HEIGHT, 0, Palette.PAPER, Palette.PAPER)
                .words(LEFT_X, 20, 13, Anchor.START, Palette.INK, true, title);
        double bandTop = y(Math.min(highest, expected + BAND_Z * bandSd), highest);
        double bandBottom = y(Math.max(0, expected - BAND_Z * bandSd), highest);
        svg.rectangle(LEFT_X, bandTop, RIGHT_X - LEFT_X, bandBottom - bandTop, 0, Palette.SHADE, Palette.SHADE);
        for (int bin = 0; bin < counts.length; bin++) {
            double top = y(counts[bin], highest);
            svg.line(
                    LEFT_X + bin * step + step / 2,
                    BOTTOM_Y,
                    LEFT_X + bin * step + step / 2,
                    top,
                    Palette.SLATE,
                    step - 4,
                    "");
        }
        svg.line(LEFT_X, y(expected, highest), RIGHT_X, y(expected, highest), Palette.PLUM, 1.5, "6 4")
                .line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.INK, 1.5, "")
                .words(
                        LEFT_X - 6,
                        y(expected, highest) + 4,
                        11,
                        Anchor.END,
                        Palette.PLUM,
                        false,
                        reader.say(new Amount(expected, "", 0)));
        for (double share : new double[] {0, 0.5, 1}) {
            svg.words(
                    LEFT_X + share * (RIGHT_X - LEFT_X),
                    BOTTOM_Y + 16,
                    11,
                    Anchor.MIDDLE,
                    Palette.INK,
                    false,
                    reader.say(Amount.exact(share, "")));
        }
        return svg.words(
                        LEFT_X,
                        BOTTOM_Y + 34,
                        11,
                        Anchor.START,
                        Palette.INK,
                        false,
                        reader.labels("app/picture").of("pit-share"))
                .close();
    }

    private static double y(double count, double highest) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * count / highest;
    }
}
