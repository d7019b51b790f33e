package cornerbook.app.picture.air;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.air.AirSaid;
import cornerbook.core.changeover.ChangeOverDays;
import cornerbook.core.changeover.ChangeOverSeason;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The chance of a cold day over the year, with the days of autumn and spring for changing over. */
public final class ColdDaysOverYear {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 220;
    private static final double LEFT_X = 40;
    private static final double RIGHT_X = 424;
    private static final double TOP_Y = 34;
    private static final double BOTTOM_Y = 178;
    private static final int TICKS = 5;
    private static final int MONTHS = 12;
    private static final int MONTHS_APART = 2;
    private static final double PERCENT = 100;

    private ColdDaysOverYear() {}

    public static String svg(ChangeOverDays days, Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        var begins = days.course().getFirst().day();
        var chance = new Axis(BOTTOM_Y, TOP_Y, 0, PERCENT, "", reader);
        var time = new Axis(
                LEFT_X, RIGHT_X, begins.toEpochDay(), begins.plusYears(1).toEpochDay(), "", reader);
        var seasons = Stream.concat(Stream.ofNullable(days.autumn()), Stream.ofNullable(days.spring()))
                .sorted(Comparator.comparing(ChangeOverSeason::from))
                .toList();
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "cold-over-year",
                        "days",
                        seasons.stream()
                                .map(season -> labels.of("change-days", "from", season.from(), "until", season.until()))
                                .collect(Collectors.joining(", "))));
        for (var season : seasons) {
            band(svg, season, time);
        }
        for (var tick : chance.ticks(TICKS)) {
            svg.line(LEFT_X, tick.place(), RIGHT_X, tick.place(), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 6, tick.place() + 4, 12, Anchor.END, Palette.INK, false, tick.words());
        }
        for (int month = 0; month < MONTHS; month += MONTHS_APART) {
            var first = begins.plusMonths(month);
            double x = x(time, first);
            svg.line(x, BOTTOM_Y, x, BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(
                    x,
                    BOTTOM_Y + 19,
                    12,
                    Anchor.START,
                    Palette.INK,
                    false,
                    reader.say(new AirSaid.MonthName(first.getMonth())));
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("cold-axis"));
        var course = days.course();
        for (int i = 1; i < course.size(); i++) {
            var from = course.get(i - 1);
            var to = course.get(i);
            svg.line(
                    x(time, from.day()),
                    chance.place(PERCENT * from.chance()),
                    x(time, to.day()),
                    chance.place(PERCENT * to.chance()),
                    Palette.SLATE,
                    2.5,
                    "");
        }
        for (var season : seasons) {
            double x = x(time, season.best());
            svg.line(x, BOTTOM_Y, x, TOP_Y, Palette.PLUM, 1.5, "5 4");
        }
        return svg.close();
    }

    private static void band(Svg svg, ChangeOverSeason season, Axis time) {
        double from = x(time, season.from());
        svg.rectangle(
                from,
                TOP_Y,
                x(time, season.until().plusDays(1)) - from,
                BOTTOM_Y - TOP_Y,
                0,
                Palette.BAND,
                Palette.HAIRLINE);
    }

    private static double x(Axis time, LocalDate day) {
        return time.place((double) day.toEpochDay());
    }
}
