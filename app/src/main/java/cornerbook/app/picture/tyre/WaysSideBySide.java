package cornerbook.app.picture.tyre;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.cost.renew.RenewCosts;
import cornerbook.core.cost.renew.WayCost;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.List;

/** What each open way costs over the same distance: tread that was used, tread thrown away, and visits. */
public final class WaysSideBySide {
    private static final int WIDTH = 440;
    private static final double LEFT_X = 4;
    private static final double RIGHT_X = 376;
    private static final double TOP_Y = 34;
    private static final double ROW = 46;
    private static final double BAR = 18;

    private WaysSideBySide() {}

    public static String svg(RenewCosts costs, Reader reader) {
        var labels = reader.labels(AgeOfTyre.ROOM);
        var open = costs.ways().stream().filter(WayCost::isOpen).toList();
        var svg = new Svg(
                WIDTH,
                (int) (TOP_Y + open.size() * ROW),
                labels.of("ways", "distance", new Amount(costs.distanceKm(), "km", 0)));
        legend(svg, labels);
        double most = open.stream().mapToDouble(way -> spent(way, costs)).max().orElseThrow();
        double y = TOP_Y;
        for (var way : open) {
            svg.words(LEFT_X, y + 12, 13, Anchor.START, Palette.INK, false, reader.say(way.way()));
            double x = LEFT_X;
            for (var part : parts(way, costs)) {
                double width = (RIGHT_X - LEFT_X) * part.money() / Math.max(most, 1);
                if (width > 0) {
                    svg.rectangle(x, y + 18, width, BAR, 0, part.colour(), part.colour());
                }
                x += Math.max(0, width);
            }
            svg.words(
                    x + 8,
                    y + 32,
                    13,
                    Anchor.START,
                    Palette.INK,
                    true,
                    reader.say(new Amount(spent(way, costs), "", 0)));
            y += ROW;
        }
        return svg.close();
    }

    private record Part(double money, String colour) {}

    private static void legend(Svg svg, Labels labels) {
        svg.words(LEFT_X, 16, 12, Anchor.START, Palette.SLATE, true, labels.of("tread-used"));
        svg.words(LEFT_X + 150, 16, 12, Anchor.START, Palette.OCHRE, true, labels.of("tread-thrown-away"));
        svg.words(LEFT_X + 290, 16, 12, Anchor.START, Palette.PLUM, true, labels.of("visits"));
    }

    private static double spent(WayCost way, RenewCosts costs) {
        return way.per1000Km() * costs.distanceKm() / 1000;
    }

    private static List<Part> parts(WayCost way, RenewCosts costs) {
        return List.of(
                new Part(
                        spent(way, costs)
                                - way.spent().thrownAway()
                                - way.spent().visits(),
                        Palette.SLATE),
                new Part(way.spent().thrownAway(), Palette.OCHRE),
                new Part(way.spent().visits(), Palette.PLUM));
    }
}
