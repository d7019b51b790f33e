package cornerbook.app.picture.tyre;

import cornerbook.words.Reader;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.corner.Side;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The tread of one tyre cut across, seen from behind the car: what is left above each groove's bottom, the limit, and
 * where the surface was when new. On a left wheel the outer groove lies left, on a right wheel right.
 */
public final class TreadSection {
    private static final int WIDTH = 220;
    private static final int HEIGHT = 150;
    private static final double LEFT_X = 16;
    private static final double RIGHT_X = 204;
    private static final double BOTTOM_Y = 96;
    private static final double NEW_Y = 26;
    private static final double GROOVE_HALF_WIDTH = 9;

    private TreadSection() {}

    /**
     * Draws it; a groove that was never read is left out.
     *
     * @param limitMm depth at the limit line
     * @param newDepthMm depth when new, the height of the picture
     */
    public static String svg(TyreForecast tyre, double limitMm, double newDepthMm, Reader reader) {
        var labels = reader.labels(AgeOfTyre.ROOM);
        var limit = depth(limitMm);
        double highestMm = Math.max(
                newDepthMm,
                tyre.grooves().stream()
                        .mapToDouble(GrooveForecast::depthMm)
                        .max()
                        .orElse(0));
        var ordered = tyre.grooves().stream()
                .sorted(Comparator.comparingDouble(groove -> middleX(tyre, groove.groove())))
                .toList();
        var description = labels.of(
                "cut-across",
                "corner",
                tyre.corner(),
                "grooves",
                ordered.stream()
                        .map(groove -> reader.say(groove.groove()) + " " + reader.say(depth(groove.depthMm())))
                        .collect(Collectors.joining(", ")),
                "limit",
                limit);
        var svg = new Svg(WIDTH, HEIGHT, description);
        if (ordered.isEmpty()) {
            return svg.words(WIDTH / 2.0, 70, 14, Anchor.MIDDLE, Palette.INK, false, labels.of("tread-not-read"))
                    .close();
        }
        svg.line(LEFT_X, NEW_Y, RIGHT_X, NEW_Y, Palette.SLATE, 1, "2 4");
        svg.words(
                RIGHT_X,
                NEW_Y - 7,
                12,
                Anchor.END,
                Palette.SLATE,
                false,
                labels.of("new", "depth", depth(newDepthMm)));
        svg.path(outline(tyre, ordered, highestMm), Palette.SLATE, "none", 0);
        double limitY = heightOf(limitMm, highestMm);
        // Paper below the plum, so that the line also shows on the rubber.
        svg.line(LEFT_X - 10, limitY, RIGHT_X + 10, limitY, Palette.PAPER, 4, "");
        svg.line(LEFT_X - 10, limitY, RIGHT_X + 10, limitY, Palette.PLUM, 2, "7 3");
        svg.words(
                LEFT_X - 10,
                NEW_Y - 7,
                12,
                Anchor.START,
                Palette.PLUM,
                false,
                labels.of("limit", "limit", limit));
        for (var groove : ordered) {
            double x = middleX(tyre, groove.groove());
            boolean below = groove.depthMm() < limitMm;
            svg.words(
                    x,
                    127,
                    15,
                    Anchor.MIDDLE,
                    below ? Palette.PLUM : Palette.INK,
                    true,
                    reader.number(depth(groove.depthMm())));
            svg.words(x, 144, 12, Anchor.MIDDLE, Palette.INK, false, reader.say(groove.groove()));
        }
        return svg.close();
    }

    private static String outline(TyreForecast tyre, List<GrooveForecast> ordered, double highestMm) {
        var points = new ArrayList<String>();
        double baseY = BOTTOM_Y + 12;
        points.add(point(LEFT_X, baseY));
        points.add(point(LEFT_X, heightOf(ordered.getFirst().depthMm(), highestMm)));
        for (var groove : ordered) {
            double x = middleX(tyre, groove.groove());
            double surfaceY = heightOf(groove.depthMm(), highestMm);
            points.add(point(x - GROOVE_HALF_WIDTH, surfaceY));
            points.add(point(x - GROOVE_HALF_WIDTH + 4, BOTTOM_Y));
            points.add(point(x + GROOVE_HALF_WIDTH - 4, BOTTOM_Y));
            points.add(point(x + GROOVE_HALF_WIDTH, surfaceY));
        }
        points.add(point(RIGHT_X, heightOf(ordered.getLast().depthMm(), highestMm)));
        points.add(point(RIGHT_X, baseY));
        return "M" + String.join("L", points) + "Z";
    }

    private static String point(double x, double y) {
        return Svg.number(x) + " " + Svg.number(y);
    }

    private static double heightOf(double depthMm, double highestMm) {
        return BOTTOM_Y - (BOTTOM_Y - NEW_Y) * depthMm / highestMm;
    }

    private static double middleX(TyreForecast tyre, Spot groove) {
        boolean outerIsLeft = tyre.corner().side() == Side.LEFT;
        return switch (groove) {
            case CENTRE -> 110;
            case OUTER -> outerIsLeft ? 48 : 172;
            case INNER -> outerIsLeft ? 172 : 48;
        };
    }

    private static Amount depth(double depthMm) {
        return new Amount(depthMm, "mm", 1);
    }
}
