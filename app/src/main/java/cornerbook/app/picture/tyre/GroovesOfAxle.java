package cornerbook.app.picture.tyre;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.tread.AxleAlignment;
import cornerbook.core.tread.TreadAcross;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.List;

/** What is left of the three grooves of both tyres of an axle, seen from behind, with the tread at which they are replaced. */
public final class GroovesOfAxle {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 220;
    private static final double TOP_Y = 52;
    private static final double BOTTOM_Y = 166;
    private static final double LEFT_X = 24;
    private static final double RIGHT_X = 240;
    private static final double GROOVE = 48;
    private static final double APART = 60;

    private final AxleAlignment alignment;
    private final Reader reader;
    private final Labels labels;

    private GroovesOfAxle(AxleAlignment alignment, Reader reader) {
        this.alignment = alignment;
        this.reader = reader;
        labels = reader.labels(AgeOfTyre.ROOM);
    }

    public static String svg(AxleAlignment alignment, Reader reader) {
        return new GroovesOfAxle(alignment, reader).draw();
    }

    private String draw() {
        var left = alignment.left();
        var right = alignment.right();
        var leftMm = List.of(left.outerMm(), left.centreMm(), left.innerMm());
        var rightMm = List.of(right.innerMm(), right.centreMm(), right.outerMm());
        var svg = new Svg(WIDTH, HEIGHT, labels.of("grooves", "left", said(leftMm), "right", said(rightMm)));
        var end = new Amount(alignment.life().endMm(), "mm", 1);
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("from-behind", "unit", reader.unit("mm")));
        tyre(svg, LEFT_X, leftMm, left);
        tyre(svg, RIGHT_X, rightMm, right);
        double endY = y(alignment.life().endMm());
        svg.line(LEFT_X - 10, endY, RIGHT_X + 2 * APART + GROOVE + 10, endY, Palette.PLUM, 1.5, "7 3");
        svg.words(WIDTH - 4, 16, 12, Anchor.END, Palette.PLUM, true, "– – " + labels.of("replaced-at", "depth", end));
        names(svg, LEFT_X, "groove-outer", "groove-inner", "left-tyre");
        names(svg, RIGHT_X, "groove-inner", "groove-outer", "right-tyre");
        return svg.close();
    }

    private void tyre(Svg svg, double x, List<Double> grooves, TreadAcross tyre) {
        for (int i = 0; i < grooves.size(); i++) {
            double depthMm = grooves.get(i);
            double place = x + i * APART;
            boolean low = alignment.named() && depthMm == tyre.lowestMm();
            svg.rectangle(place, TOP_Y, GROOVE, BOTTOM_Y - TOP_Y, 0, Palette.SHADE, "none");
            svg.rectangle(
                    place, y(depthMm), GROOVE, BOTTOM_Y - y(depthMm), 0, low ? Palette.OCHRE : Palette.SLATE, "none");
            svg.words(
                    place + GROOVE / 2,
                    TOP_Y - 8,
                    13,
                    Anchor.MIDDLE,
                    Palette.INK,
                    true,
                    reader.say(new Amount(depthMm, "mm", 1)));
        }
    }

    private void names(Svg svg, double x, String first, String last, String tyre) {
        svg.words(x + GROOVE / 2, BOTTOM_Y + 18, 12, Anchor.MIDDLE, Palette.INK, false, labels.of(first));
        svg.words(x + 2 * APART + GROOVE / 2, BOTTOM_Y + 18, 12, Anchor.MIDDLE, Palette.INK, false, labels.of(last));
        svg.words(x + APART + GROOVE / 2, BOTTOM_Y + 38, 13, Anchor.MIDDLE, Palette.INK, true, labels.of(tyre));
    }

    private static Said said(List<Double> grooves) {
        return Listed.commas(
                grooves.stream().map(depth -> new Amount(depth, "mm", 1)).toList());
    }

    private double y(double depthMm) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * depthMm / alignment.life().newMm();
    }
}
