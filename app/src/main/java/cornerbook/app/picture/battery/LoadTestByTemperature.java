package cornerbook.app.picture.battery;

import cornerbook.core.say.Amount;
import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Plot;
import cornerbook.app.picture.Plot.Legend;
import cornerbook.app.picture.Plot.Mark;
import cornerbook.core.battery.LoadTest;
import cornerbook.words.Reader;
import java.util.List;

/** The least voltage under half of the rated current over the battery's temperature, and the voltage that was measured. */
public final class LoadTestByTemperature {
    private static final double COLDEST_C = -20;
    private static final double WARMEST_C = 30;
    private static final double ROOM_V = 0.3;

    private LoadTestByTemperature() {}

    public static String svg(LoadTest test, Reader reader) {
        double warmestC = Math.max(WARMEST_C, test.temperatureC());
        double lowV = Math.min(LoadTest.leastVolts(COLDEST_C), test.volts()) - ROOM_V;
        double highV = Math.max(LoadTest.leastVolts(warmestC), test.volts()) + ROOM_V;
        var colour = test.passes() ? Palette.SLATE : Palette.PLUM;
        var labels = reader.labels(BatteryOverVisits.ROOM);
        var load = Amount.of(test.loadA(), "A");
        return new Plot(
                        labels.of("load-test", "load", load),
                        new Axis(Plot.LEFT_X, Plot.RIGHT_X, COLDEST_C, warmestC, "°C", reader),
                        new Axis(Plot.BOTTOM_Y, Plot.TOP_Y, lowV, highV, "V", reader),
                        List.of(
                                new Legend(
                                        Mark.DOT,
                                        colour,
                                        labels.of(
                                                "measured",
                                                "voltage",
                                                Amount.of(test.volts(), "V"),
                                                "temperature",
                                                Amount.of(test.temperatureC(), "°C"),
                                                "passes",
                                                test.passes())),
                                new Legend(
                                        Mark.RING,
                                        Palette.OCHRE,
                                        labels.of("least-there", "voltage", Amount.of(test.leastVolts(), "V")))))
                .axes(labels.of("battery-temperature"), labels.of("after-load", "load", load))
                .curve(COLDEST_C, warmestC, LoadTest::leastVolts, Palette.OCHRE)
                .point(Mark.RING, test.temperatureC(), test.leastVolts(), Palette.OCHRE)
                .point(Mark.DOT, test.temperatureC(), test.volts(), colour)
                .close();
    }
}
