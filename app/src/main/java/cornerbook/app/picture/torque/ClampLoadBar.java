package cornerbook.app.picture.torque;

import cornerbook.words.Reader;
import cornerbook.core.say.Between;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;

/** A band of clamp load against the proof load: three quarters of it, where a joint is meant to stand, and all of it. */
public final class ClampLoadBar {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 132;
    static final String ROOM = "app/picture/torque";
    private static final double LEFT_X = 14;
    private static final double RIGHT_X = 406;
    private static final double TOP_Y = 44;
    private static final double BAR = 30;
    /** Share at which a reusable joint is meant to stand (Shigley). */
    private static final double MEANT_SHARE = 0.75;

    private ClampLoadBar() {}

    /**
     * The picture.
     *
     * @param leastShare of the proof load, 0 and more
     * @param mostShare of the proof load
     * @param proofN the proof load
     */
    public static String svg(String title, double leastShare, double mostShare, double proofN, Reader reader) {
        var labels = reader.labels(ROOM);
        var proof = new Amount(proofN / 1000, "kN", 0);
        double end = Math.max(1.2, mostShare * 1.05);
        var band = reader.say(new Between(leastShare * 100, mostShare * 100, "%", 0));
        var svg = new Svg(WIDTH, HEIGHT, labels.of("clamp-load", "title", title, "band", band, "proof", proof));
        svg.words(LEFT_X, 18, 14, Anchor.START, Palette.INK, true, title);
        svg.words(RIGHT_X, 18, 14, Anchor.END, Palette.INK, true, band);
        svg.rectangle(LEFT_X, TOP_Y, RIGHT_X - LEFT_X, BAR, 0, Palette.SHADE, Palette.HAIRLINE);
        boolean over = mostShare > 1;
        double from = x(leastShare, end);
        svg.rectangle(
                from,
                TOP_Y + 4,
                Math.max(3, x(mostShare, end) - from),
                BAR - 8,
                3,
                over ? Palette.PLUM : Palette.OCHRE,
                over ? Palette.PLUM : Palette.OCHRE);
        mark(svg, x(MEANT_SHARE, end), Palette.SLATE, "6 3", reader.say(Amount.of(MEANT_SHARE * 100, "%")), labels.of("meant"));
        mark(svg, x(1, end), Palette.PLUM, "", labels.of("proof-load"), reader.say(proof));
        return svg.close();
    }

    private static void mark(Svg svg, double x, String colour, String dashes, String upper, String lower) {
        svg.line(x, TOP_Y - 8, x, TOP_Y + BAR + 8, Palette.PAPER, 5, "");
        svg.line(x, TOP_Y - 8, x, TOP_Y + BAR + 8, colour, 2.5, dashes);
        svg.words(x, TOP_Y + BAR + 25, 13, Anchor.MIDDLE, colour, true, upper);
        svg.words(x, TOP_Y + BAR + 42, 13, Anchor.MIDDLE, colour, false, lower);
    }

    private static double x(double share, double end) {
        return LEFT_X + (RIGHT_X - LEFT_X) * share / end;
    }
}
