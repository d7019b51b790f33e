package cornerbook.app.picture.torque;

import cornerbook.words.Reader;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.torque.TighteningOrder;
import java.util.stream.Collectors;

/** The fasteners of a wheel with the order in which they are tightened: the large figure in each is its turn, lines lead to the next. */
public final class TighteningSequence {
    private static final int WIDTH = 300;
    private static final int HEIGHT = 300;
    private static final double MIDDLE = 150;
    private static final double RIM_RADIUS = 142;
    private static final double HUB_RADIUS = 26;

    private TighteningSequence() {}

    /** The picture; the first fastener is at the top. */
    public static String svg(TighteningOrder sequence, Reader reader) {
        var labels = reader.labels(ClampLoadBar.ROOM);
        var order = sequence.order();
        int count = order.size();
        double circle = count > 6 ? 100 : 88;
        double nut = count > 6 ? 23 : 27;
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "order",
                        "fasteners",
                        order.stream().map(String::valueOf).collect(Collectors.joining(", " + labels.of("then") + " "))));
        svg.circle(MIDDLE, MIDDLE, RIM_RADIUS, Palette.SHADE, Palette.SLATE, 3, "");
        svg.circle(MIDDLE, MIDDLE, RIM_RADIUS - 12, Palette.PAPER, Palette.HAIRLINE, 1.5, "");
        for (int turn = 1; turn < count; turn++) {
            svg.line(
                    x(order.get(turn - 1), count, circle),
                    y(order.get(turn - 1), count, circle),
                    x(order.get(turn), count, circle),
                    y(order.get(turn), count, circle),
                    Palette.OCHRE,
                    2.5,
                    "");
        }
        svg.circle(MIDDLE, MIDDLE, HUB_RADIUS, Palette.SHADE, Palette.SLATE, 2, "");
        for (int turn = 1; turn <= count; turn++) {
            double x = x(order.get(turn - 1), count, circle);
            double y = y(order.get(turn - 1), count, circle);
            svg.path(hexagon(x, y, nut), turn == 1 ? Palette.PLUM : Palette.SLATE, Palette.PAPER, 2);
            svg.words(x, y + 8, 22, Anchor.MIDDLE, Palette.PAPER, true, String.valueOf(turn));
        }
        return svg.close();
    }

    private static double x(int fastener, int count, double circle) {
        return MIDDLE + circle * Math.sin(2 * Math.PI * (fastener - 1) / count);
    }

    private static double y(int fastener, int count, double circle) {
        return MIDDLE - circle * Math.cos(2 * Math.PI * (fastener - 1) / count);
    }

    private static String hexagon(double x, double y, double radius) {
        var path = new StringBuilder();
        for (int corner = 0; corner < 6; corner++) {
            double angle = Math.PI / 3 * corner;
            path.append(corner == 0 ? 'M' : 'L')
                    .append(Svg.number(x + radius * Math.cos(angle)))
                    .append(' ')
                    .append(Svg.number(y + radius * Math.sin(angle)));
        }
        return path.append('Z').toString();
    }
}
