package cornerbook.app.picture.brake;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.brake.judge.BrakeMeasured;
import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The points of one disc around it, as how far each stands from their mean, much enlarged: two rings mark the thickness variation
 * that is allowed. Point 1 is at the top, the others follow clockwise.
 */
public final class DiscPoints {
    private static final int WIDTH = 220;
    private static final int HEIGHT = 200;
    private static final int HEIGHT_WITH_NOTE = 218;
    private static final double MIDDLE_X = 110;
    private static final double MIDDLE_Y = 84;
    private static final double MEAN_RADIUS = 52;
    /** Half of the variation that is allowed, in the picture. */
    private static final double HALF_LIMIT = 14;
    /** A point far out is drawn at the edge; its number says how far it is. */
    private static final double FARTHEST = 26;

    private DiscPoints() {}

    /** Draws them; one value alone is written as words. */
    public static String svg(BrakeMeasured measured, Reader reader) {
        var labels = reader.labels(BrakePads.ROOM);
        var points = measured.discPointsMm();
        var svg = new Svg(WIDTH, measured.discReplaced() ? HEIGHT_WITH_NOTE : HEIGHT, description(measured, reader));
        if (points.isEmpty()) {
            svg.circle(MIDDLE_X, MIDDLE_Y, MEAN_RADIUS, Palette.SHADE, Palette.SLATE, 1.5, "");
            words(svg, measured, labels.of("one-place-read"), reader);
            return svg.close();
        }
        double limitMm = measured.brake().thicknessVariationLimitMm();
        double meanMm =
                points.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double perMm = HALF_LIMIT / (limitMm / 2);
        svg.circle(MIDDLE_X, MIDDLE_Y, MEAN_RADIUS + HALF_LIMIT, "none", Palette.PLUM, 1.5, "6 3");
        svg.circle(MIDDLE_X, MIDDLE_Y, MEAN_RADIUS - HALF_LIMIT, "none", Palette.PLUM, 1.5, "6 3");
        svg.circle(MIDDLE_X, MIDDLE_Y, MEAN_RADIUS, "none", Palette.HAIRLINE, 1, "");
        svg.path(
                IntStream.range(0, points.size())
                        .mapToObj(i -> at(i, points.size(), radius((points.get(i) - meanMm) * perMm)))
                        .collect(Collectors.joining("L", "M", "Z")),
                "none",
                Palette.OCHRE,
                2.5);
        int thinnest = points.indexOf(Collections.min(points));
        for (int i = 0; i < points.size(); i++) {
            double radius = radius((points.get(i) - meanMm) * perMm);
            svg.circle(
                    x(i, points.size(), radius),
                    y(i, points.size(), radius),
                    i == thinnest ? 5.5 : 3.5,
                    Palette.PAPER,
                    i == thinnest ? Palette.PLUM : Palette.SLATE,
                    2,
                    "");
        }
        svg.words(MIDDLE_X, MIDDLE_Y - MEAN_RADIUS + 22, 12, Anchor.MIDDLE, Palette.INK, false, "1");
        words(
                svg,
                measured,
                labels.of(
                        "variation",
                        "variation",
                        new Amount(spread(points), "mm", 3),
                        "limit",
                        reader.number(new Amount(limitMm, "mm", 3))),
                reader);
        return svg.close();
    }

    private static void words(Svg svg, BrakeMeasured measured, String below, Reader reader) {
        var thinnestMm = measured.discMm();
        if (thinnestMm == null) {
            return;
        }
        boolean thin = thinnestMm < measured.brake().discMinimumMm();
        svg.words(
                MIDDLE_X,
                MIDDLE_Y + 6,
                15,
                Anchor.MIDDLE,
                thin ? Palette.PLUM : Palette.INK,
                true,
                reader.number(thickness(thinnestMm)));
        svg.words(
                MIDDLE_X,
                176,
                12,
                Anchor.MIDDLE,
                Palette.INK,
                false,
                reader.labels(BrakePads.ROOM)
                        .of(
                                "thinnest-minimum",
                                "minimum",
                                thickness(measured.brake().discMinimumMm())));
        svg.words(MIDDLE_X, 193, 11, Anchor.MIDDLE, Palette.INK, false, below);
        if (measured.discReplaced()) {
            svg.words(
                    MIDDLE_X,
                    211,
                    12,
                    Anchor.MIDDLE,
                    Palette.INK,
                    true,
                    reader.labels(BrakePads.ROOM).of("found-replaced"));
        }
    }

    private static String description(BrakeMeasured measured, Reader reader) {
        var found = found(measured, reader);
        return measured.discReplaced()
                ? found + "; " + reader.labels(BrakePads.ROOM).of("found-replaced")
                : found;
    }

    private static String found(BrakeMeasured measured, Reader reader) {
        var labels = reader.labels(BrakePads.ROOM);
        var points = measured.discPointsMm();
        var thinnestMm = measured.discMm();
        var thinnest = thinnestMm == null
                ? labels.of("disc-not-read", "corner", measured.corner())
                : labels.of(
                        "disc",
                        "corner",
                        measured.corner(),
                        "thinnest",
                        thickness(thinnestMm),
                        "minimum",
                        thickness(measured.brake().discMinimumMm()));
        return points.isEmpty()
                ? thinnest
                : thinnest + "; "
                        + labels.of(
                                "disc-points",
                                "variation",
                                new Amount(spread(points), "mm", 3),
                                "n",
                                points.size(),
                                "points",
                                points.stream()
                                        .map(point -> reader.say(new Amount(point, "mm", 3)))
                                        .collect(Collectors.joining(", ")));
    }

    private static Amount thickness(double thicknessMm) {
        return new Amount(thicknessMm, "mm", 2);
    }

    private static double spread(List<Double> points) {
        return Collections.max(points) - Collections.min(points);
    }

    private static double radius(double fromMean) {
        return MEAN_RADIUS + Math.clamp(fromMean, -FARTHEST, FARTHEST);
    }

    private static String at(int point, int of, double radius) {
        return Svg.number(x(point, of, radius)) + " " + Svg.number(y(point, of, radius));
    }

    private static double x(int point, int of, double radius) {
        return MIDDLE_X + radius * Math.sin(2 * Math.PI * point / of);
    }

    private static double y(int point, int of, double radius) {
        return MIDDLE_Y - radius * Math.cos(2 * Math.PI * point / of);
    }
}
