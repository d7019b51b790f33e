package cornerbook.app.picture.brake;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.brake.interval.BestInterval;
import cornerbook.core.say.Amount;
import cornerbook.words.Reader;

/** What cleaning and seized pads cost in a year, over the interval of cleaning. */
public final class CostOverInterval {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 232;
    private static final double LEFT_X = 54;
    private static final double RIGHT_X = 420;
    private static final double TOP_Y = 30;
    private static final double BOTTOM_Y = 180;
    private static final int TICKS = 5;
    /** Intervals that cost more than this times the least are above the picture. */
    private static final double MOST_TIMES = 2.5;

    private CostOverInterval() {}

    public static String svg(BestInterval interval, Reader reader) {
        var labels = reader.labels(BrakePads.ROOM);
        var course = interval.course();
        double most = MOST_TIMES * interval.least().costPerYear();
        var months = new Axis(LEFT_X, RIGHT_X, 0, course.getLast().months(), "", reader);
        var money = new Axis(BOTTOM_Y, TOP_Y, 0, most, "", reader);
        var svg = new Svg(WIDTH, HEIGHT, labels.of("cost-over-interval"));
        for (var tick : money.ticks(TICKS)) {
            svg.line(LEFT_X, tick.place(), RIGHT_X, tick.place(), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, tick.place() + 4, 12, Anchor.END, Palette.INK, false, tick.words());
        }
        for (var tick : months.ticks(TICKS)) {
            svg.line(tick.place(), BOTTOM_Y, tick.place(), BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(tick.place(), BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, tick.words());
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("cost-in-a-year"));
        svg.words(RIGHT_X, BOTTOM_Y + 40, 12, Anchor.END, Palette.INK, false, labels.of("months-between"));
        for (int i = 1; i < course.size(); i++) {
            var from = course.get(i - 1);
            var to = course.get(i);
            if (from.costPerYear() <= most) {
                svg.line(
                        months.place(from.months()),
                        money.place(from.costPerYear()),
                        months.place(to.months()),
                        money.place(to.costPerYear()),
                        Palette.SLATE,
                        2.5,
                        "");
            }
        }
        double riskX = months.place(interval.risk().months());
        svg.line(riskX, BOTTOM_Y, riskX, TOP_Y, Palette.OCHRE, 1.5, "5 4");
        var percent = new Amount(Math.rint(100 * interval.risk().chance()), "%", 0);
        svg.words(
                riskX + 5,
                BOTTOM_Y - 8,
                12,
                Anchor.START,
                Palette.OCHRE,
                true,
                labels.of("seizes-at", "chance", percent));
        var best = interval.least().months();
        if (best != null) {
            svg.circle(
                    months.place(best),
                    money.place(interval.least().costPerYear()),
                    5.5,
                    Palette.PLUM,
                    Palette.PLUM,
                    1,
                    "");
        }
        return svg.close();
    }
}
