package cornerbook.app.picture.battery;

import cornerbook.words.Labels;
import cornerbook.words.Reader;
import cornerbook.core.say.Amount;
import org.jspecify.annotations.Nullable;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.battery.HealthTrend;
import cornerbook.core.battery.judge.BatteryCurve;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The health of the 12 V battery over the visits: each measured share of its rating, the straight line through them with a
 * band of two standard errors, the share at which it ends, and the day on which the line is there.
 */
public final class BatteryOverVisits {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 230;
    static final String ROOM = "app/picture/battery";
    private static final double LEFT_X = 46;
    private static final double RIGHT_X = 426;
    private static final double TOP_Y = 30;
    private static final double BOTTOM_Y = 178;
    private static final double LOWEST = 0.4;
    private static final double HIGHEST = 1.2;
    private static final int FEWEST = 2;
    /** How far the line is drawn beyond the last visit; an end that is later is only named. */
    private static final int AHEAD_DAYS = 730;

    private final LocalDate from;
    private final LocalDate until;
    private final Labels labels;
    private final Svg svg;

    private BatteryOverVisits(LocalDate from, LocalDate until, Labels labels, String description) {
        this.labels = labels;
        this.from = from;
        this.until = until;
        this.svg = new Svg(WIDTH, HEIGHT, description);
    }

    /** Draws it; nothing before there are two readings. */
    public static String svg(BatteryCurve curve, Reader reader) {
        var labels = reader.labels(ROOM);
        var points = curve.points();
        if (points.size() < FEWEST) {
            return "";
        }
        var trend = curve.trend().orElse(null);
        var last = points.getLast();
        var end = trend == null ? null : trend.reaches();
        boolean shown = end != null && !end.isAfter(last.day().plusDays(AHEAD_DAYS));
        var picture = new BatteryOverVisits(
                points.getFirst().day(),
                trend == null ? last.day().plusDays(1) : last.day().plusDays(AHEAD_DAYS),
                labels,
                description(labels, points.size(), points.getFirst().share(), last.share(), end));
        picture.axes(curve.leastShare());
        if (trend != null) {
            picture.line(trend, shown && end != null ? end : picture.until);
        }
        for (var point : points) {
            picture.svg.circle(picture.x(point.day()), y(point.share()), 4, Palette.SLATE, Palette.SLATE, 1, "");
        }
        if (shown && end != null) {
            picture.end(end, curve.leastShare());
        }
        picture.svg.words(
                LEFT_X,
                222,
                12,
                Anchor.START,
                Palette.OCHRE,
                false,
                labels.of(trend == null ? "line-needs" : "straight-line"));
        return picture.svg.close();
    }

        private static String description(
            Labels labels, int visits, double first, double last, @Nullable LocalDate end) {
        var words = labels.of("health", "n", visits, "first", percent(first), "last", percent(last));
        return end == null ? words : words + "; " + labels.of("health-end", "day", end);
    }

    private static Amount percent(double share) {
        return Amount.of(100 * share, "%");
    }

    private void axes(double leastShare) {
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("of-its-rating"));
        for (int percent = 40; percent <= 120; percent += 20) {
            double y = y(percent / 100.0);
            svg.line(LEFT_X, y, RIGHT_X, y, Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, y + 4, 12, Anchor.END, Palette.INK, false, Integer.toString(percent));
        }
        svg.line(LEFT_X, y(leastShare), RIGHT_X, y(leastShare), Palette.PLUM, 2, "6 4");
        svg.words(LEFT_X + 4, y(leastShare) - 5, 12, Anchor.START, Palette.PLUM, false, labels.of("at-its-end"));
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        for (int year = from.getYear() + 1; year <= until.getYear(); year++) {
            double x = x(LocalDate.of(year, 1, 1));
            svg.line(x, BOTTOM_Y, x, BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(x, BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, Integer.toString(year));
        }
    }

    /** The band goes on as far as the picture; the line stops where the battery does. */
    private void line(HealthTrend trend, LocalDate stop) {
        int steps = 24;
        var upper = new StringBuilder("M");
        var lower = new StringBuilder();
        long days = ChronoUnit.DAYS.between(from, stop);
        for (int step = 0; step <= steps; step++) {
            var day = from.plusDays(days * step / steps);
            double share = trend.shareOn(day);
            double band = trend.bandOn(day);
            upper.append(step == 0 ? "" : "L").append(at(day, share + band));
            lower.insert(0, "L" + at(day, share - band));
        }
        svg.path(upper.append(lower).append('Z').toString(), Palette.BAND, "none", 0);
        svg.line(x(from), y(trend.shareOn(from)), x(stop), y(trend.shareOn(stop)), Palette.OCHRE, 2.5, "");
    }

    private void end(LocalDate day, double leastShare) {
        svg.line(x(day), y(leastShare), x(day), BOTTOM_Y, Palette.PLUM, 1.5, "");
        svg.circle(x(day), y(leastShare), 5, Palette.PAPER, Palette.PLUM, 2, "");
        boolean right = x(day) > (LEFT_X + RIGHT_X) / 2;
        svg.words(
                x(day) + (right ? -8 : 8),
                BOTTOM_Y - 8,
                12,
                right ? Anchor.END : Anchor.START,
                Palette.PLUM,
                true,
                labels.of("about-day", "day", day));
    }

    private String at(LocalDate day, double share) {
        return Svg.number(x(day)) + " " + Svg.number(y(share));
    }

    private double x(LocalDate day) {
        return LEFT_X
                + (RIGHT_X - LEFT_X)
                        * Math.clamp(
                                (double) ChronoUnit.DAYS.between(from, day) / ChronoUnit.DAYS.between(from, until),
                                0,
                                1);
    }

    private static double y(double share) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * (Math.clamp(share, LOWEST, HIGHEST) - LOWEST) / (HIGHEST - LOWEST);
    }
}
