package cornerbook.app.picture.air;

import cornerbook.words.Labels;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Plot;
import cornerbook.app.picture.Plot.Legend;
import cornerbook.app.picture.Plot.Mark;
import cornerbook.core.air.PressureCurve;
import cornerbook.core.air.PressureSetting;
import cornerbook.core.air.judge.PressureOutlook;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cold pressure over the tyre's temperature: now, where the car will stand, and on the coldest morning, with the warning. */
public final class PressureOverTemperature {
    private static final double ROOM_C = 6;
    private static final double ROOM_SHARE = 0.06;

    private PressureOverTemperature() {}

    /** The picture of a setting; the mark of now stands off the line where the car will stand at another altitude. */
    public static String svg(PressureSetting setting, Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        var curve = setting.standing();
        return draw(
                labels.of("over-temperature"),
                curve,
                List.of(
                        new Point(Mark.DOT, labels.of("now"), setting.tyreC(), setting.nowKpa(), setting.gaugeErrorKpa()),
                        new Point(Mark.RING, labels.of("where-it-will-stand"), setting.standingC(), setting.placardKpa(), 0)),
                reader);
    }

    /** The picture of the tyre that was set nearest to its warning. */
    public static String svg(PressureOutlook outlook, Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        var curve = outlook.curve();
        return draw(
                labels.of("over-temperature-at", "corner", outlook.corner()),
                curve,
                List.of(new Point(Mark.DOT, labels.of("as-set", "corner", outlook.corner()), curve.atC(), curve.pressureKpa(), 0)),
                reader);
    }

    private record Point(Mark mark, String what, double temperatureC, double pressureKpa, double errorKpa) {
        Legend legend(Labels labels) {
            return new Legend(
                    mark,
                    Palette.SLATE,
                    labels.of(
                            "point",
                            "what",
                            what,
                            "pressure",
                            Amount.of(pressureKpa, "kPa"),
                            "temperature",
                            Amount.of(temperatureC, "°C")));
        }
    }

    private static String draw(String title, PressureCurve curve, List<Point> known, Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        var points = new ArrayList<>(known);
        Optional.ofNullable(curve.coldestC())
                .ifPresent(coldestC ->
                        points.add(new Point(Mark.DIAMOND, labels.of("coldest-morning"), coldestC, curve.atKpa(coldestC), 0)));
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
                points.stream().map(point -> point.legend(labels)).toList());
        legend.add(new Legend(Mark.DASHES, Palette.PLUM, labels.of("warning-below", "pressure", Amount.of(curve.warningKpa(), "kPa"))));
        var plot = new Plot(
                        title,
                        new Axis(Plot.LEFT_X, Plot.RIGHT_X, fromC, toC, "°C", reader),
                        new Axis(Plot.BOTTOM_Y, Plot.TOP_Y, lowKpa - room, highKpa + room, "kPa", reader),
                        legend)
                .axes(labels.of("tyre-temperature"), labels.of("pressure"))
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
