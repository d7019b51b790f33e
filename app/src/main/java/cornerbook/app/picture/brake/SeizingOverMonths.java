package cornerbook.app.picture.brake;

import cornerbook.words.Labels;
import cornerbook.words.Reader;
import cornerbook.core.say.Chance;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.brake.seizing.TurnbullEstimate;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The chance that a pad has seized, over the months since its guides were cleaned: the fitted curve with its 95 % band, and beside it
 * Turnbull's estimate, which assumes no shape. Where the data cannot tell within an interval, the step is drawn sloping and dashed.
 */
public final class SeizingOverMonths {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 230;
    private static final double LEFT_X = 46;
    private static final double RIGHT_X = 426;
    private static final double TOP_Y = 30;
    private static final double BOTTOM_Y = 178;
    private static final int MONTHS = 48;
    private static final int STEP_MONTHS = 12;

    private SeizingOverMonths() {}

    /** Draws it; nothing while no pad of the car was followed. */
    public static String svg(SeizingCurve curve, Reader reader) {
        var labels = reader.labels(BrakePads.ROOM);
        var hazard = curve.hazard();
        var exposure = curve.exposure();
        var seen = curve.seen();
        if (seen.isEmpty()) {
            return "";
        }
        double inAYear = hazard.chance(exposure, 0, STEP_MONTHS).probability();
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "seizing",
                        "first",
                        new Chance(inAYear),
                        "second",
                        new Chance(hazard.chance(exposure, 0, 2.0 * STEP_MONTHS)
                                .probability()),
                        "n",
                        seen.size()));
        axes(svg, labels);

        var months = IntStream.rangeClosed(1, MONTHS).boxed().toList();
        svg.path(
                Stream.concat(
                                months.stream()
                                        .map(month -> at(
                                                month,
                                                hazard.chance(exposure, 0, month)
                                                        .upper())),
                                months.reversed().stream()
                                        .map(month -> at(
                                                month,
                                                hazard.chance(exposure, 0, month)
                                                        .lower())))
                        .collect(Collectors.joining("L", "M" + at(0, 0) + "L", "Z")),
                Palette.BAND,
                "none",
                0);
        svg.path(
                months.stream()
                        .map(month ->
                                at(month, hazard.chance(exposure, 0, month).probability()))
                        .collect(Collectors.joining("L", "M" + at(0, 0) + "L", "")),
                "none",
                Palette.OCHRE,
                2.5);
        turnbull(svg, TurnbullEstimate.of(seen));
        svg.words(LEFT_X, 222, 12, Anchor.START, Palette.OCHRE, false, labels.of("fit"));
        svg.words(RIGHT_X, 222, 12, Anchor.END, Palette.PLUM, false, labels.of("as-seen"));
        return svg.close();
    }

    private static void axes(Svg svg, Labels labels) {
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("seized"));
        for (int percent = 0; percent <= 100; percent += 25) {
            double y = y(percent / 100.0);
            svg.line(LEFT_X, y, RIGHT_X, y, Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, y + 4, 12, Anchor.END, Palette.INK, false, Integer.toString(percent));
        }
        for (int month = 0; month <= MONTHS; month += STEP_MONTHS) {
            svg.line(x(month), BOTTOM_Y, x(month), BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(x(month), BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, Integer.toString(month));
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        svg.words(RIGHT_X, 16, 12, Anchor.END, Palette.INK, false, labels.of("months-since-cleaning"));
    }

    private static void turnbull(Svg svg, TurnbullEstimate estimate) {
        double month = 0;
        double seized = 0;
        for (var step : estimate.steps()) {
            if (step.by() == Double.POSITIVE_INFINITY) {
                line(svg, month, seized, step.after(), seized, "");
                return;
            }
            line(svg, month, seized, step.after(), seized, "");
            line(svg, step.after(), seized, step.by(), seized + step.probability(), "4 3");
            month = step.by();
            seized += step.probability();
        }
    }

    private static void line(Svg svg, double fromMonth, double from, double toMonth, double to, String dashes) {
        svg.line(x(fromMonth), y(from), x(toMonth), y(to), Palette.PLUM, 2.2, dashes);
    }

    private static String at(double month, double chance) {
        return Svg.number(x(month)) + " " + Svg.number(y(chance));
    }

    private static double x(double month) {
        return LEFT_X + (RIGHT_X - LEFT_X) * Math.min(month, MONTHS) / MONTHS;
    }

    private static double y(double chance) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * chance;
    }
}
