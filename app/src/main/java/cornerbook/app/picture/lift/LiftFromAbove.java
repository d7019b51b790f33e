package cornerbook.app.picture.lift;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Side;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.LiftPoint;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The lifted car from above, front up and to scale: wheels, lift points with what each arm carries, and the centre of gravity in their polygon. */
public final class LiftFromAbove {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 400;
    static final String ROOM = "app/picture/lift";
    private static final double MIDDLE_X = 220;
    private static final double TOP_Y = 60;
    private static final double BOTTOM_Y = 350;
    private static final double LEFTMOST_X = 105;
    private static final List<Corner> AROUND = List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF);

    private final ArmLoads loads;
    private final LiftPoints points;
    private final double marginMm;
    private final Reader reader;
    private final Labels labels;
    private final double scale;
    private final double firstMm;

    private LiftFromAbove(ArmLoads loads, LiftPoints points, double marginMm, Reader reader) {
        this.loads = loads;
        this.points = points;
        this.marginMm = marginMm;
        this.reader = reader;
        this.labels = reader.labels(ROOM);
        double widestMm = loads.car().trackMm() / 2;
        double first = 0;
        double last = loads.car().wheelbaseMm();
        for (var corner : AROUND) {
            var point = points.get(corner);
            widestMm = Math.max(widestMm, Math.abs(point.leftOfCentreMm()));
            first = Math.min(first, point.behindFrontAxleMm());
            last = Math.max(last, point.behindFrontAxleMm());
        }
        firstMm = first;
        scale = Math.min((MIDDLE_X - LEFTMOST_X) / widestMm, (BOTTOM_Y - TOP_Y) / (last - first));
    }

    /** The picture; empty where the lift points are not known. */
    public static Optional<String> find(ArmLoads loads, Reader reader) {
        var points = loads.points();
        var marginMm = loads.marginMm();
        return points == null || marginMm == null
                ? Optional.empty()
                : Optional.of(new LiftFromAbove(loads, points, marginMm, reader).draw());
    }

    private String draw() {
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "lifted",
                        "arms",
                        AROUND.stream().map(this::words).collect(Collectors.joining(", ")),
                        "margin",
                        new Amount(marginMm, "mm", 0)));
        double half = loads.car().trackMm() / 2;
        svg.rectangle(
                x(half) + 4,
                y(0) - 42,
                x(-half) - x(half) - 8,
                y(loads.car().wheelbaseMm()) - y(0) + 84,
                40,
                Palette.SHADE,
                Palette.HAIRLINE);
        svg.path(
                "M212 %sL220 %sL228 %s".formatted(Svg.number(y(0) - 20), Svg.number(y(0) - 30), Svg.number(y(0) - 20)),
                "none",
                Palette.SLATE,
                2);
        svg.words(MIDDLE_X, y(0) - 4, 12, Anchor.MIDDLE, Palette.SLATE, false, reader.say(Axle.FRONT));
        for (double axleMm : new double[] {0, loads.car().wheelbaseMm()}) {
            for (double side : new double[] {half, -half}) {
                svg.rectangle(x(side) - 7, y(axleMm) - 22, 14, 44, 4, Palette.HAIRLINE, Palette.SLATE);
            }
        }
        svg.path(
                AROUND.stream().map(corner -> at(points.get(corner))).collect(Collectors.joining("L", "M", "Z")),
                Palette.PAPER,
                Palette.OCHRE,
                2);
        AROUND.forEach(corner -> drawArm(svg, corner));
        double x = x(loads.centreLeftMm());
        double y = y(loads.centreBehindFrontAxleMm());
        var side = points.nearestOnSide(loads.centreBehindFrontAxleMm(), loads.centreLeftMm());
        svg.line(x, y, x(side.leftOfCentreMm()), y(side.behindFrontAxleMm()), Palette.PLUM, 2, "5 3");
        svg.circle(x, y, 12, Palette.PAPER, Palette.PLUM, 3, "");
        svg.line(x - 18, y, x + 18, y, Palette.PLUM, 2, "");
        svg.line(x, y - 18, x, y + 18, Palette.PLUM, 2, "");
        // On the side that the dashed line does not take.
        double wordsY = y(side.behindFrontAxleMm()) > y + 1 ? y - 42 : y + 36;
        svg.words(x, wordsY, 13, Anchor.MIDDLE, Palette.PLUM, true, labels.of("centre-of-gravity"));
        svg.words(
                x,
                wordsY + 17,
                13,
                Anchor.MIDDLE,
                Palette.PLUM,
                true,
                labels.of("inside", "margin", new Amount(marginMm, "mm", 0)));
        return svg.close();
    }

    private void drawArm(Svg svg, Corner corner) {
        var point = points.get(corner);
        var arm = loads.arm(corner);
        boolean left = corner.side() == Side.LEFT;
        double x = x(point.leftOfCentreMm());
        double y = y(point.behindFrontAxleMm());
        double postX = left ? 14 : WIDTH - 14.0;
        svg.line(postX, HEIGHT / 2.0, x, y, Palette.SLATE, 8, "");
        svg.circle(x, y, 13, Palette.OCHRE, Palette.PAPER, 2, "");
        svg.rectangle(left ? 2 : WIDTH - 26.0, HEIGHT / 2.0 - 26, 24, 52, 3, Palette.SLATE, Palette.SLATE);
        boolean over = arm.overloaded();
        var anchor = left ? Anchor.START : Anchor.END;
        double edge = left ? 4 : WIDTH - 4.0;
        double wordsY = y < HEIGHT / 2.0 ? y - 26 : y + 16;
        var colour = over ? Palette.PLUM : Palette.INK;
        svg.words(edge, wordsY, 16, anchor, colour, true, reader.say(corner));
        svg.words(edge, wordsY + 18, 15, anchor, colour, true, reader.say(Amount.of(arm.loadKg(), "kg")));
        svg.words(edge, wordsY + 34, 13, anchor, colour, false, percent(arm.share()));
        svg.words(edge, wordsY + 49, 12, anchor, colour, false, labels.of("uneven", "share", percent(arm.mostShare())));
    }

    private String words(Corner corner) {
        var arm = loads.arm(corner);
        return "%s %s, %s, %s"
                .formatted(
                        reader.say(corner),
                        reader.say(Amount.of(arm.loadKg(), "kg")),
                        percent(arm.share()),
                        labels.of("uneven", "share", percent(arm.mostShare())));
    }

    private String percent(double share) {
        return reader.say(Amount.of(share * 100, "%"));
    }

    private String at(LiftPoint point) {
        return Svg.number(x(point.leftOfCentreMm())) + " " + Svg.number(y(point.behindFrontAxleMm()));
    }

    private double x(double leftMm) {
        return MIDDLE_X - leftMm * scale;
    }

    private double y(double behindMm) {
        return TOP_Y + (behindMm - firstMm) * scale;
    }
}
