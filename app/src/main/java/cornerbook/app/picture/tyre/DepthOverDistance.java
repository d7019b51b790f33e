package cornerbook.app.picture.tyre;

import cornerbook.words.Labels;
import cornerbook.words.Reader;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.tread.judge.SetForecast.BandPoint;
import cornerbook.core.tread.judge.SetForecast.DepthReading;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Depth over distance run, of the groove that is nearest to the limit in time: what was read, the expected depth, the
 * band that holds it at 90 %, and the limit.
 */
public final class DepthOverDistance {
    private static final int WIDTH = 330;
    private static final int HEIGHT = 212;
    private static final double LEFT_X = 38;
    private static final double RIGHT_X = 320;
    private static final double TOP_Y = 30;
    private static final double BOTTOM_Y = 168;
    private static final int MOST_TICKS_UP = 8;
    private static final int MOST_TICKS_ACROSS = 4;

    private final GrooveForecast groove;
    private final double limitMm;
    private final double farthestKm;
    private final double highestMm;
    private final Labels labels;
    private final Axis across;
    private final Axis up;

    private DepthOverDistance(GrooveForecast groove, double limitMm, Reader reader) {
        this.labels = reader.labels(AgeOfTyre.ROOM);
        this.groove = groove;
        this.limitMm = limitMm;
        farthestKm = Math.max(
                1000,
                Stream.concat(
                                groove.readings().stream().map(DepthReading::distanceKm),
                                groove.band().stream().map(BandPoint::distanceKm))
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElse(0));
        highestMm = Math.ceil(Stream.of(
                                groove.readings().stream().map(DepthReading::depthMm),
                                groove.band().stream().map(BandPoint::highMm),
                                Stream.of(limitMm + 1, groove.depthMm()))
                        .flatMap(depths -> depths)
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElse(1)
                + 0.2);
        across = new Axis(LEFT_X, RIGHT_X, 0, farthestKm, "km", reader);
        up = new Axis(BOTTOM_Y, TOP_Y, 0, highestMm, "mm", reader);
    }

    /** The groove shown is the one with the fewest kilometres to the limit at its mean rate. */
    public static String svg(TyreForecast tyre, double limitMm, Reader reader) {
        var first = tyre.grooves().stream().min(Comparator.comparingDouble(groove -> kilometresLeft(groove, limitMm)));
        if (first.isEmpty()) {
            return new Svg(WIDTH, 40, reader.labels(AgeOfTyre.ROOM).of("tread-of-not-read", "corner", tyre.corner()))
                    .words(WIDTH / 2.0, 25, 14, Anchor.MIDDLE, Palette.INK, false, reader.labels(AgeOfTyre.ROOM).of("tread-not-read"))
                    .close();
        }
        return new DepthOverDistance(first.get(), limitMm, reader).draw(tyre);
    }

    private static double kilometresLeft(GrooveForecast groove, double limitMm) {
        return 1000 * (groove.depthMm() - limitMm) / Math.max(groove.rateMmPer1000Km(), 1e-6);
    }

    private String draw(TyreForecast tyre) {
        var name = labels.of("groove", "groove", groove.groove());
        var limit = new Amount(limitMm, "mm", 1);
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "depth-over-distance",
                        "corner",
                        tyre.corner(),
                        "groove",
                        name,
                        "depth",
                        new Amount(groove.depthMm(), "mm", 1),
                        "rate",
                        new Amount(groove.rateMmPer1000Km(), "mm/1000 km", 2),
                        "limit",
                        limit));
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("depth", "unit", up.unit()));
        svg.words(RIGHT_X, 16, 12, Anchor.END, Palette.INK, true, name);
        drawAxes(svg);
        drawBand(svg, groove.band());
        double limitY = y(limitMm);
        svg.line(LEFT_X, limitY, RIGHT_X, limitY, Palette.PLUM, 2, "7 3");
        svg.words(
                LEFT_X + 6,
                limitY + 15,
                12,
                Anchor.START,
                Palette.PLUM,
                false,
                labels.of("limit", "limit", limit));
        for (var reading : groove.readings()) {
            svg.circle(x(reading.distanceKm()), y(reading.depthMm()), 4.5, Palette.PAPER, Palette.SLATE, 2.2, "");
        }
        return svg.close();
    }

    private void drawAxes(Svg svg) {
        for (var tick : up.ticks(MOST_TICKS_UP)) {
            svg.line(LEFT_X, tick.place(), RIGHT_X, tick.place(), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, tick.place() + 4, 12, Anchor.END, Palette.INK, false, tick.words());
        }
        for (var tick : across.ticks(MOST_TICKS_ACROSS)) {
            svg.line(tick.place(), BOTTOM_Y, tick.place(), BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(tick.place(), BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, tick.words());
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(RIGHT_X, BOTTOM_Y + 38, 12, Anchor.END, Palette.INK, false, labels.of("distance-run", "unit", across.unit()));
    }

    private void drawBand(Svg svg, List<BandPoint> band) {
        if (band.isEmpty()) {
            return;
        }
        var upper = band.stream().map(point -> at(point.distanceKm(), point.highMm()));
        var lower = band.reversed().stream().map(point -> at(point.distanceKm(), point.lowMm()));
        svg.path(Stream.concat(upper, lower).collect(Collectors.joining("L", "M", "Z")), Palette.BAND, "none", 0);
        svg.path(
                band.stream()
                        .map(point -> at(point.distanceKm(), point.meanMm()))
                        .collect(Collectors.joining("L", "M", "")),
                "none",
                Palette.OCHRE,
                2.5);
    }

    private String at(double distanceKm, double depthMm) {
        return Svg.number(x(distanceKm)) + " " + Svg.number(y(depthMm));
    }

    private double x(double distanceKm) {
        return across.place(distanceKm);
    }

    private double y(double depthMm) {
        return up.place(depthMm);
    }
}
