package cornerbook.app.picture.brake;

import cornerbook.words.Labels;
import cornerbook.core.say.Between;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.brake.burnish.BurnishDrive;
import cornerbook.core.brake.burnish.BurnishDrive.Moment;
import cornerbook.words.Reader;
import java.util.stream.Collectors;

/** The temperature of a disc over a burnish drive: stops, the way between and the cooling, with the band to reach and the limit. */
public final class TemperatureOverTime {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 230;
    private static final double LEFT_X = 46;
    private static final double RIGHT_X = 426;
    private static final double TOP_Y = 30;
    private static final double BOTTOM_Y = 178;
    private static final double SECONDS_PER_MINUTE = 60;

    private static final int TICKS = 6;

    private final BurnishDrive drive;
    private final Labels labels;
    private final Axis celsius;
    private final double lastS;

    private TemperatureOverTime(BurnishDrive drive, Reader reader) {
        this.drive = drive;
        
        this.labels = reader.labels(BrakePads.ROOM);
        double hottestC =
                drive.temperatures().stream().mapToDouble(Moment::celsius).max().orElse(0);
        double highestC = 50 * Math.ceil((Math.max(hottestC, drive.target().limitC()) + 10) / 50);
        double lowestC = 50 * Math.floor(Math.min(0, drive.target().airC()) / 50);
        celsius = new Axis(BOTTOM_Y, TOP_Y, lowestC, highestC, "°C", reader);
        lastS = drive.temperatures().getLast().seconds();
    }

    /** The picture. */
    public static String svg(BurnishDrive drive, Reader reader) {
        return new TemperatureOverTime(drive, reader).draw();
    }

    private String draw() {
        var target = drive.target();
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "burnish",
                        "axle",
                        drive.axle(),
                        "stops",
                        drive.plan().stops(),
                        "peak",
                        celsius(drive.plan().peaksC().getLast()),
                        "band",
                        new Between(target.lowestC(), target.highestC(), "°C", 0),
                        "limit",
                        celsius(target.limitC()),
                        "minutes",
                        Math.round(lastS / SECONDS_PER_MINUTE)));
        svg.rectangle(
                LEFT_X,
                y(target.highestC()),
                RIGHT_X - LEFT_X,
                y(target.lowestC()) - y(target.highestC()),
                0,
                Palette.SHADE,
                "none");
        axes(svg);
        svg.line(LEFT_X, y(target.limitC()), RIGHT_X, y(target.limitC()), Palette.PLUM, 2, "7 3");
        svg.words(
                RIGHT_X,
                y(target.limitC()) - 6,
                12,
                Anchor.END,
                Palette.PLUM,
                false,
                labels.of("limit", "limit", celsius(target.limitC())));
        svg.path(
                drive.temperatures().stream()
                        .map(moment -> Svg.number(x(moment.seconds())) + " " + Svg.number(y(moment.celsius())))
                        .collect(Collectors.joining("L", "M", "")),
                "none",
                Palette.OCHRE,
                2.5);
        return svg.close();
    }

    private void axes(Svg svg) {
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("disc-temperature", "unit", celsius.unit()));
        for (var tick : celsius.ticks(TICKS)) {
            svg.line(LEFT_X, tick.place(), RIGHT_X, tick.place(), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, tick.place() + 4, 12, Anchor.END, Palette.INK, false, tick.words());
        }
        int stepMinutes = lastS > 30 * SECONDS_PER_MINUTE ? 10 : 5;
        for (int minute = 0; minute * SECONDS_PER_MINUTE <= lastS; minute += stepMinutes) {
            double x = x(minute * SECONDS_PER_MINUTE);
            svg.line(x, BOTTOM_Y, x, BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(x, BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, Integer.toString(minute));
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(RIGHT_X, BOTTOM_Y + 38, 12, Anchor.END, Palette.INK, false, labels.of("minutes-from-first-stop"));
        svg.words(LEFT_X, BOTTOM_Y + 38, 12, Anchor.START, Palette.INK, false, labels.of("shaded"));
    }

    private double x(double seconds) {
        return LEFT_X + (RIGHT_X - LEFT_X) * seconds / Math.max(lastS, 1);
    }

    private double y(double temperatureC) {
        return celsius.place(temperatureC);
    }

    private static Amount celsius(double temperatureC) {
        return Amount.of(temperatureC, "°C");
    }
}
