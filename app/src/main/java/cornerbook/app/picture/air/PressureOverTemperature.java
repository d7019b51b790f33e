package cornerbook.app.picture.air;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Plot;
import cornerbook.app.picture.Plot.Legend;
import cornerbook.app.picture.Plot.Mark;
import cornerbook.core.air.PressureCurve;
import cornerbook.core.air.PressureSetting;
import cornerbook.core.air.judge.PressureOutlook;
import cornerbook.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cold pressure over the tyre's temperature: now, where the car will stand, and on the coldest morning, with the warning. */
public final class PressureOverTemperature {
    private static final double ROOM_C = 6;
    private static final double ROOM_SHARE = 0.06;

    private PressureOverTemperature() {}

    /** The picture of a setting; the mark of now stands off the line where the car will stand at another altitude. */
    public static String svg(PressureSetting setting, Shown shown) {
        var curve = setting.standing();
        return draw(
                "Pressure over the tyre's temperature",
                curve,
                List.of(
                        new Point(Mark.DOT, "now", setting.tyreC(), setting.nowKpa(), setting.gaugeErrorKpa()),
                        new Point(Mark.RING, "where it will stand", setting.standingC(), setting.placardKpa(), 0)),
                shown);
    }

    /** The picture of the tyre that was set nearest to its warning. */
    public static String svg(PressureOutlook outlook, Shown shown) {
        var curve = outlook.curve();
        return draw(
                "Pressure at %s over the tyre's temperature".formatted(outlook.corner()),
                curve,
                List.of(new Point(Mark.DOT, outlook.corner() + " as set", curve.atC(), curve.pressureKpa(), 0)),
                shown);
    }

    private record Point(Mark mark, String what, double temperatureC, double pressureKpa, double errorKpa) {
        Legend legend(Shown shown) {
            return new Legend(
                    mark,
                    Palette.SLATE,
                    "%s: %s at %s".formatted(what, shown.show(pressureKpa, "kPa"), shown.show(temperatureC, "°C")));
        }
    }

    private static String draw(String title, PressureCurve curve, List<Point> known, Shown shown) {
        var points = new ArrayList<>(known);
        Optional.ofNullable(curve.coldestC())
                .ifPresent(coldestC ->
                        points.add(new Point(Mark.DIAMOND, "coldest morning", coldestC, curve.atKpa(coldestC), 0)));
        var temperatures = points.stream().mapToDouble(Point::temperatureC).summaryStatistics();
        double fromC = temperatures.getMin() - ROOM_C;
        double toC = temperatures.getMax() + ROOM_C;
        double highKpa = Math.max(
                curve.atKpa(toC),
                points.stream()
                        .mapToDouble(point -> point.pressureKpa() + point.errorKpa())
                        .max()
                        .orElseThrow());
        double lowKpa = Math.min(curve.warningKpa(), curve.atKpa(fromC));
        double room = ROOM_SHARE * (highKpa - lowKpa);
        var legend = new ArrayList<>(
                points.stream().map(point -> point.legend(shown)).toList());
        legend.add(new Legend(Mark.DASHES, Palette.PLUM, "warning below " + shown.show(curve.warningKpa(), "kPa")));
        var plot = new Plot(
                        title,
                        new Axis(Plot.LEFT_X, Plot.RIGHT_X, fromC, toC, "°C", shown),
                        new Axis(Plot.BOTTOM_Y, Plot.TOP_Y, lowKpa - room, highKpa + room, "kPa", shown),
                        legend)
                .axes("temperature of the tyre", "pressure")
                .level(curve.warningKpa(), Palette.PLUM)
                .curve(fromC, toC, curve::atKpa, Palette.OCHRE);
        for (var point : points) {
            if (point.errorKpa() > 0) {
                plot.error(point.temperatureC(), point.pressureKpa(), point.errorKpa(), Palette.SLATE);
            }
            boolean warns = point.pressureKpa() < curve.warningKpa();
            plot.point(point.mark(), point.temperatureC(), point.pressureKpa(), warns ? Palette.PLUM : Palette.SLATE);
        }
        return plot.close();
    }
}
