package cornerbook.app.picture.battery;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Plot;
import cornerbook.app.picture.Plot.Legend;
import cornerbook.app.picture.Plot.Mark;
import cornerbook.core.battery.LoadTest;
import cornerbook.words.Shown;
import java.util.List;

/** The least voltage under half of the rated current over the battery's temperature, and the voltage that was measured. */
public final class LoadTestByTemperature {
    private static final double COLDEST_C = -20;
    private static final double WARMEST_C = 30;
    private static final double ROOM_V = 0.3;

    private LoadTestByTemperature() {}

    public static String svg(LoadTest test, Shown shown) {
        double warmestC = Math.max(WARMEST_C, test.temperatureC());
        double lowV = Math.min(LoadTest.leastVolts(COLDEST_C), test.volts()) - ROOM_V;
        double highV = Math.max(LoadTest.leastVolts(warmestC), test.volts()) + ROOM_V;
        var colour = test.passes() ? Palette.SLATE : Palette.PLUM;
        var at = shown.show(test.temperatureC(), "°C");
        return new Plot(
                        "Load test at %.0f A".formatted(test.loadA()),
                        new Axis(Plot.LEFT_X, Plot.RIGHT_X, COLDEST_C, warmestC, "°C", shown),
                        new Axis(Plot.BOTTOM_Y, Plot.TOP_Y, lowV, highV, "V", shown),
                        List.of(
                                new Legend(
                                        Mark.DOT,
                                        colour,
                                        "measured: %s at %s, %s"
                                                .formatted(
                                                        shown.show(test.volts(), "V"),
                                                        at,
                                                        test.passes() ? "passes" : "does not pass")),
                                new Legend(
                                        Mark.RING,
                                        Palette.OCHRE,
                                        "least there: %s".formatted(shown.show(test.leastVolts(), "V")))))
                .axes("temperature of the battery", "after 15 s of %.0f A".formatted(test.loadA()))
                .curve(COLDEST_C, warmestC, LoadTest::leastVolts, Palette.OCHRE)
                .point(Mark.RING, test.temperatureC(), test.leastVolts(), Palette.OCHRE)
                .point(Mark.DOT, test.temperatureC(), test.volts(), colour)
                .close();
    }
}
