package cornerbook.app.picture.brake;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.brake.DiscBrake;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;

/** The thickness of the two pads of a corner over the days of all visits, with the limit and what a new pad has. */
public final class PadsOverVisits {
    private static final int WIDTH = 330;
    private static final int HEIGHT = 196;
    private static final double LEFT_X = 38;
    private static final double RIGHT_X = 320;
    private static final double TOP_Y = 30;
    private static final double BOTTOM_Y = 168;
    private static final int MOST_TICKS_UP = 4;
    private static final int FEWEST = 2;
    private static final int LEAST_DAYS = 365;
    /** Round marks would hide each other where both pads are alike. */
    private static final double ASIDE = 4;

    private final LocalDate from;
    private final long days;
    private final Axis up;
    private final Labels labels;

    private PadsOverVisits(List<Thickness> read, double highestMm, Reader reader) {
        labels = reader.labels(BrakePads.ROOM);
        from = read.stream().map(Thickness::day).min(LocalDate::compareTo).orElseThrow();
        var until = read.stream().map(Thickness::day).max(LocalDate::compareTo).orElseThrow();
        days = Math.max(LEAST_DAYS, ChronoUnit.DAYS.between(from, until));
        up = new Axis(BOTTOM_Y, TOP_Y, 0, highestMm, "mm", reader);
    }

    private record Thickness(LocalDate day, Spot pad, double mm) {}

    /** Draws it; nothing for a brake without pads, nor before two visits read one. */
    public static String svg(CarHistory history, Corner corner, Reader reader) {
        if (!(history.vehicle().axle(corner.axle()).brake().friction() instanceof DiscBrake brake)) {
            return "";
        }
        var read = history.visits().stream()
                .flatMap(visit -> {
                    var readings = new StandingReadings(visit);
                    return Stream.of(Spot.OUTER, Spot.INNER)
                            .flatMap(pad -> readings
                                    .ofCorner(Measure.PAD_THICKNESS, corner, pad)
                                    .map(Reading::value)
                                    .map(mm -> new Thickness(visit.date(), pad, mm))
                                    .stream());
                })
                .toList();
        if (read.stream().map(Thickness::day).distinct().count() < FEWEST) {
            return "";
        }
        double highestMm = Math.ceil(
                Stream.concat(Stream.of(brake.padNewMm()), read.stream().map(Thickness::mm))
                                .mapToDouble(Double::doubleValue)
                                .max()
                                .orElseThrow()
                        + 0.5);
        return new PadsOverVisits(read, highestMm, reader).draw(read, corner, brake, reader);
    }

    private String draw(List<Thickness> read, Corner corner, DiscBrake brake, Reader reader) {
        var limit = new Amount(brake.padMinimumMm(), "mm", 1);
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "pads-over-visits",
                        "corner",
                        corner,
                        "outer",
                        course(read, Spot.OUTER, reader),
                        "inner",
                        course(read, Spot.INNER, reader),
                        "limit",
                        limit));
        svg.words(4, 16, 12, Anchor.START, Palette.INK, false, labels.of("thickness", "unit", up.unit()));
        svg.circle(RIGHT_X - 172, 12, 4.5, Palette.SLATE, Palette.SLATE, 2.2, "");
        svg.words(RIGHT_X - 162, 16, 12, Anchor.START, Palette.INK, false, reader.say(Spot.OUTER));
        svg.circle(RIGHT_X - 78, 12, 4.5, Palette.PAPER, Palette.SLATE, 2.2, "");
        svg.words(RIGHT_X - 68, 16, 12, Anchor.START, Palette.INK, false, reader.say(Spot.INNER));
        axes(svg);
        double limitY = up.place(brake.padMinimumMm());
        svg.line(LEFT_X, limitY, RIGHT_X, limitY, Palette.PLUM, 2, "7 3");
        svg.words(LEFT_X + 6, limitY + 15, 12, Anchor.START, Palette.PLUM, false, labels.of("limit", "limit", limit));
        for (var each : read) {
            boolean outer = each.pad() == Spot.OUTER;
            svg.circle(
                    x(each.day()) + (outer ? -ASIDE : ASIDE),
                    up.place(each.mm()),
                    4.5,
                    outer ? Palette.SLATE : Palette.PAPER,
                    Palette.SLATE,
                    2.2,
                    "");
        }
        return svg.close();
    }

    private void axes(Svg svg) {
        for (var tick : up.ticks(MOST_TICKS_UP)) {
            svg.line(LEFT_X, tick.place(), RIGHT_X, tick.place(), Palette.HAIRLINE, 1, "");
            svg.words(LEFT_X - 8, tick.place() + 4, 12, Anchor.END, Palette.INK, false, tick.words());
        }
        svg.line(LEFT_X, BOTTOM_Y, RIGHT_X, BOTTOM_Y, Palette.SLATE, 1.5, "");
        for (var newYear = LocalDate.of(from.getYear() + 1, 1, 1);
                !newYear.isAfter(from.plusDays(days));
                newYear = newYear.plusYears(1)) {
            double x = x(newYear);
            svg.line(x, BOTTOM_Y, x, BOTTOM_Y + 5, Palette.SLATE, 1, "");
            svg.words(x, BOTTOM_Y + 19, 12, Anchor.MIDDLE, Palette.INK, false, Integer.toString(newYear.getYear()));
        }
    }

    /** The first and the last, for who does not see the picture. */
    private static String course(List<Thickness> read, Spot pad, Reader reader) {
        var ofPad = read.stream().filter(each -> each.pad() == pad).toList();
        return ofPad.isEmpty()
                ? ""
                : reader.labels(BrakePads.ROOM)
                        .of(
                                "pad-course",
                                "side",
                                pad,
                                "first",
                                new Amount(ofPad.getFirst().mm(), "mm", 1),
                                "on",
                                ofPad.getFirst().day(),
                                "last",
                                new Amount(ofPad.getLast().mm(), "mm", 1),
                                "until",
                                ofPad.getLast().day());
    }

    private double x(LocalDate day) {
        double inset = 2 * ASIDE;
        return LEFT_X + inset + (RIGHT_X - LEFT_X - 2 * inset) * ChronoUnit.DAYS.between(from, day) / days;
    }
}
