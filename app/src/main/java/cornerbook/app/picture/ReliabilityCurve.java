package cornerbook.app.picture;

import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.util.List;

/** How often it came true over the chance that was said: what honest forecasts do lies on the diagonal. */
public final class ReliabilityCurve {
    private static final int WIDTH = 340;
    private static final int HEIGHT = 352;
    private static final double LEFT_X = 46;
    private static final double RIGHT_X = 322;
    private static final double TOP_Y = 34;
    private static final double BOTTOM_Y = 282;
    private static final double TWICE = 2;

    private ReliabilityCurve() {}

    /**
     * A point of a curve.
     *
     * @param said mean of the chances, 0 to 1
     * @param came share that came true
     * @param sd standard error of the share
     */
    public record Point(double said, double came, double sd) {}

    /**
     * The picture.
     *
     * @param learned drawn full, with twice its standard error
     * @param byDefault drawn dashed
     */
    public static String svg(String title, List<Point> learned, List<Point> byDefault, Reader reader) {
        var words = reader.labels("app/picture");
        var svg = new Svg(WIDTH, HEIGHT, title)
                .rectangle(0, 0, WIDTH, HEIGHT, 0, Palette.PAPER, Palette.PAPER)
                .words(LEFT_X, 20, 13, Anchor.START, Palette.INK, true, title);
        for (double share = 0; share <= 1; share += 0.25) {
            var tick = reader.say(Amount.exact(share, ""));
            svg.line(LEFT_X, y(share), RIGHT_X, y(share), Palette.HAIRLINE, 1, "")
                    .words(LEFT_X - 6, y(share) + 4, 11, Anchor.END, Palette.INK, false, tick)
                    .words(x(share), BOTTOM_Y + 16, 11, Anchor.MIDDLE, Palette.INK, false, tick);
        }
        svg.line(x(0), y(0), x(1), y(1), Palette.PLUM, 1.5, "6 4");
        curve(svg, byDefault, Palette.OCHRE, "4 3");
        for (var point : learned) {
            svg.line(
                    x(point.said()),
                    y(point.came() - TWICE * point.sd()),
                    x(point.said()),
                    y(point.came() + TWICE * point.sd()),
                    Palette.SLATE,
                    1.5,
                    "");
        }
        curve(svg, learned, Palette.SLATE, "");
        return svg.words(LEFT_X, BOTTOM_Y + 34, 11, Anchor.START, Palette.INK, false, words.of("said-and-came"))
                .words(LEFT_X, BOTTOM_Y + 50, 11, Anchor.START, Palette.SLATE, false, words.of("chances-learned"))
                .words(LEFT_X, BOTTOM_Y + 64, 11, Anchor.START, Palette.OCHRE, false, words.of("chances-by-default"))
                .close();
    }

    private static void curve(Svg svg, List<Point> points, String colour, String dashes) {
        for (int i = 0; i < points.size(); i++) {
            var point = points.get(i);
            if (i > 0) {
                var before = points.get(i - 1);
                svg.line(x(before.said()), y(before.came()), x(point.said()), y(point.came()), colour, 2, dashes);
            }
            svg.circle(
                    x(point.said()), y(point.came()), 3.5, dashes.isEmpty() ? colour : Palette.PAPER, colour, 1.5, "");
        }
    }

    private static double x(double share) {
        return LEFT_X + (RIGHT_X - LEFT_X) * share;
    }

    private static double y(double share) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * Math.clamp(share, 0, 1);
    }
}
