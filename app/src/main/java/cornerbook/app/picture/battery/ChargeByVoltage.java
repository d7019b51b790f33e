package cornerbook.app.picture.battery;

import cornerbook.words.Reader;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.battery.RestVoltage;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** State of charge over the voltage at rest by the table of the chemistry, with the band in which it may lie, and the voltage that was read. */
public final class ChargeByVoltage {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 240;
    private static final double LEFT_X = 46;
    private static final double RIGHT_X = 400;
    private static final double TOP_Y = 24;
    private static final double BOTTOM_Y = 190;
    private static final double LEAST_V = 11.6;
    private static final double MOST_V = 13.0;
    private static final double STEP_V = 0.02;
    /** 80 °F, at which the table is given. */
    private static final Amount TABLE = new Amount(26.7, "°C", 1);

    private ChargeByVoltage() {}

    /** The picture. */
    public static String svg(RestVoltage rest, Reader reader) {
        var labels = reader.labels(BatteryOverVisits.ROOM);
        var volts = IntStream.rangeClosed(0, (int) Math.round((MOST_V - LEAST_V) / STEP_V))
                .mapToObj(i -> LEAST_V + i * STEP_V)
                .toList();
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "charge-by-voltage",
                        "chemistry",
                        rest.chemistry(),
                        "voltage",
                        Amount.of(rest.atTableTemperatureV(), "V"),
                        "table",
                        TABLE,
                        "charge",
                        Amount.of(rest.stateOfCharge() * 100, "%"),
                        "error",
                        Amount.of(RestVoltage.ERROR_SHARE * 100, "%")));
        for (int percent = 0; percent <= 100; percent += 25) {
            double y = y(percent / 100.0);
            svg.line(LEFT_X, y, RIGHT_X, y, Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 6, y + 4, 12, Anchor.END, Palette.INK, false, reader.say(Amount.of(percent, "%")));
        }
        var upper = volts.stream().map(v -> at(v, charge(rest, v) + RestVoltage.ERROR_SHARE));
        var lower = volts.reversed().stream().map(v -> at(v, charge(rest, v) - RestVoltage.ERROR_SHARE));
        svg.path(Stream.concat(upper, lower).collect(Collectors.joining("L", "M", "Z")), Palette.BAND, "none", 0);
        svg.path(
                volts.stream().map(v -> at(v, charge(rest, v))).collect(Collectors.joining("L", "M", "")),
                "none",
                Palette.OCHRE,
                2.5);
        for (double v : List.of(11.6, 12.0, 12.4, 12.8)) {
            svg.line(x(v), BOTTOM_Y, x(v), BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(
                    x(v), BOTTOM_Y + 20, 12, Anchor.MIDDLE, Palette.INK, false, reader.say(new Amount(v, "", 1)));
        }
        svg.words(RIGHT_X, BOTTOM_Y + 38, 12, Anchor.END, Palette.INK, false, labels.of("volts-at-rest", "table", TABLE));
        double x = x(Math.clamp(rest.atTableTemperatureV(), LEAST_V, MOST_V));
        double y = y(rest.stateOfCharge());
        svg.line(x, y, x, BOTTOM_Y, Palette.PLUM, 2, "5 3");
        svg.line(LEFT_X, y, x, y, Palette.PLUM, 2, "5 3");
        svg.circle(x, y, 6, Palette.PLUM, Palette.PAPER, 2, "");
        svg.words(
                Math.max(x - 12, LEFT_X + 50),
                Math.max(y - 10, TOP_Y + 4),
                14,
                Anchor.END,
                Palette.PLUM,
                true,
                labels.of("about-charge", "charge", Amount.of(rest.stateOfCharge() * 100, "%")));
        return svg.close();
    }

    private static double charge(RestVoltage rest, double volts) {
        return RestVoltage.chargeAtTableTemperature(rest.chemistry(), volts);
    }

    private static String at(double volts, double share) {
        return Svg.number(x(volts)) + " " + Svg.number(y(Math.clamp(share, 0, 1)));
    }

    private static double x(double volts) {
        return LEFT_X + (RIGHT_X - LEFT_X) * (volts - LEAST_V) / (MOST_V - LEAST_V);
    }

    private static double y(double share) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * share;
    }
}
