package cornerbook.app.picture.tyre;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.cost.TyreCost;
import cornerbook.core.cost.TyreCosts;
import cornerbook.core.cost.TyreCosts.Paid;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is paid for tyres and energy over the distance: it rises while driving and steps up where tyres are bought. */
public final class PaidOverDistance {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 246;
    private static final double LEFT_X = 54;
    private static final double RIGHT_X = 420;
    private static final double TOP_Y = 48;
    private static final double BOTTOM_Y = 192;
    private static final int TICKS = 5;
    private static final String DASHES = "7 3";

    private final TyreCosts costs;
    private final Labels labels;
    private final List<Paid> first;
    private final List<Paid> other;
    private final Axis km;
    private final Axis money;

    private PaidOverDistance(TyreCosts costs, Reader reader) {
        this.costs = costs;
        labels = reader.labels(AgeOfTyre.ROOM);
        double untilKm = Math.max(lifeKm(costs.first()), lifeKm(costs.other()));
        first = costs.course(costs.first(), untilKm);
        var second = costs.other();
        other = second == null ? List.of() : costs.course(second, untilKm);
        double most = Math.max(
                first.getLast().money(), other.isEmpty() ? 0 : other.getLast().money());
        km = new Axis(LEFT_X, RIGHT_X, 0, untilKm, "km", reader);
        money = new Axis(BOTTOM_Y, TOP_Y, 0, 1.05 * Math.max(most, 1), "", reader);
    }

    public static String svg(TyreCosts costs, Reader reader) {
        return new PaidOverDistance(costs, reader).draw();
    }

    private static double lifeKm(@Nullable TyreCost cost) {
        return cost == null ? 0 : cost.lifeKm();
    }

    private String draw() {
        var evenKm = costs.paidBackKm();
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                evenKm == null
                        ? labels.of("paid", "n", other.isEmpty() ? 1 : 2)
                        : labels.of("paid-with-even", "distance", distance(evenKm)));
        for (var tick : money.ticks(TICKS)) {
            svg.line(LEFT_X, tick.place(), RIGHT_X, tick.place(), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, tick.place() + 4, 12, Anchor.END, Palette.INK, false, tick.words());
        }
        for (var tick : km.ticks(TICKS)) {
            svg.line(tick.place(), BOTTOM_Y, tick.place(), BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(tick.place(), BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, tick.words());
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("paid-axis"));
        svg.words(
                RIGHT_X,
                BOTTOM_Y + 40,
                12,
                Anchor.END,
                Palette.INK,
                false,
                labels.of("driven-axis", "unit", km.unit()));
        svg.words(LEFT_X, 36, 12, Anchor.START, Palette.SLATE, true, "—— " + labels.of("this-tyre"));
        course(svg, first, Palette.SLATE, "");
        if (!other.isEmpty()) {
            svg.words(LEFT_X + 110, 36, 12, Anchor.START, Palette.OCHRE, true, "– – " + labels.of("other-tyre"));
            course(svg, other, Palette.OCHRE, DASHES);
        }
        if (evenKm != null) {
            even(svg, evenKm);
        }
        return svg.close();
    }

    private void course(Svg svg, List<Paid> course, String colour, String dashes) {
        for (int i = 1; i < course.size(); i++) {
            var from = course.get(i - 1);
            var to = course.get(i);
            svg.line(
                    km.place(from.km()),
                    money.place(from.money()),
                    km.place(to.km()),
                    money.place(to.money()),
                    colour,
                    2.5,
                    dashes);
        }
    }

    private void even(Svg svg, double evenKm) {
        double x = km.place(evenKm);
        svg.line(x, BOTTOM_Y, x, TOP_Y, Palette.PLUM, 1.5, "2 3");
        boolean left = x > (LEFT_X + RIGHT_X) / 2;
        svg.words(
                left ? x - 6 : x + 6,
                BOTTOM_Y - 8,
                12,
                left ? Anchor.END : Anchor.START,
                Palette.PLUM,
                true,
                labels.of("paid-back", "distance", distance(evenKm)));
    }

    private static Amount distance(double evenKm) {
        return new Amount(100 * Math.rint(evenKm / 100), "km", 0);
    }
}
