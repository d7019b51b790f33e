package cornerbook.app.picture.tyre;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.tread.judge.SetForecast.BandPoint;
import cornerbook.core.tread.judge.SetForecast.DepthReading;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Depth over distance run, of the groove that is nearest to the limit in time: what was read, the expected depth, the
 * band that holds it at 90 %, and the limit.
 */
public final class DepthOverDistance {
    private static final int WIDTH = 330;
    private static final int HEIGHT = 212;
    private static final double LEFT_X = 30;
    private static final double RIGHT_X = 320;
    private static final double TOP_Y = 30;
    private static final double BOTTOM_Y = 168;

    private final GrooveForecast groove;
    private final double limitMm;
    private final double farthestKm;
    private final double highestMm;

    private DepthOverDistance(GrooveForecast groove, double limitMm) {
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
    }

    /** The groove shown is the one with the fewest kilometres to the limit at its mean rate. */
    public static String svg(TyreForecast tyre, double limitMm) {
        var first = tyre.grooves().stream().min(Comparator.comparingDouble(groove -> kilometresLeft(groove, limitMm)));
        if (first.isEmpty()) {
            return new Svg(WIDTH, 40, "Tread of " + tyre.corner() + " was not read")
                    .words(WIDTH / 2.0, 25, 14, Anchor.MIDDLE, Palette.INK, false, "tread not read")
                    .close();
        }
        return new DepthOverDistance(first.get(), limitMm).draw(tyre);
    }

    private static double kilometresLeft(GrooveForecast groove, double limitMm) {
        return 1000 * (groove.depthMm() - limitMm) / Math.max(groove.rateMmPer1000Km(), 1e-6);
    }

    private String draw(TyreForecast tyre) {
        var name = groove.groove().name().toLowerCase(Locale.ROOT) + " groove";
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                String.format(
                        Locale.ROOT,
                        "Depth over distance, %s, %s: now %.1f mm, %.2f mm per 1000 km, limit %.1f mm",
                        tyre.corner(),
                        name,
                        groove.depthMm(),
                        groove.rateMmPer1000Km(),
                        limitMm));
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, "depth, mm");
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
                String.format(Locale.ROOT, "limit %.1f mm", limitMm));
        for (var reading : groove.readings()) {
            svg.circle(x(reading.distanceKm()), y(reading.depthMm()), 4.5, Palette.PAPER, Palette.SLATE, 2.2, "");
        }
        return svg.close();
    }

    private void drawAxes(Svg svg) {
        int stepMm = highestMm > 8 ? 2 : 1;
        for (int depthMm = 0; depthMm <= highestMm; depthMm += stepMm) {
            svg.line(LEFT_X, y(depthMm), RIGHT_X, y(depthMm), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, y(depthMm) + 4, 12, Anchor.END, Palette.INK, false, Integer.toString(depthMm));
        }
        double stepKm = stepKm(farthestKm);
        for (double km = 0; km <= farthestKm; km += stepKm) {
            svg.line(x(km), BOTTOM_Y, x(km), BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(x(km), BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, Svg.number(km / 1000));
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(RIGHT_X, BOTTOM_Y + 38, 12, Anchor.END, Palette.INK, false, "distance run by the tyre, 1000 km");
    }

    /** A round step that gives at most six intervals: 1, 2 or 5 times a power of ten. */
    private static double stepKm(double farthestKm) {
        double power = Math.pow(10, Math.floor(Math.log10(farthestKm / 6)));
        double share = farthestKm / 6 / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
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
        return LEFT_X + (RIGHT_X - LEFT_X) * distanceKm / farthestKm;
    }

    /** A band below zero is drawn at zero: there is no rubber there. */
    private double y(double depthMm) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * Math.max(depthMm, 0) / highestMm;
    }
}
