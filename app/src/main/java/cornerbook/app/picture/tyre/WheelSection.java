package cornerbook.app.picture.tyre;

import cornerbook.words.Labels;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.tyre.SetFit;
import cornerbook.words.Reader;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Section through hub and rim, outward to the right: rim widths, offsets, bores and the gap to the caliper in one scale,
 * the wheel of the set against the one that fits the car. How far the rim lies from the hub is not known of them: there
 * the picture is broken.
 */
public final class WheelSection {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 400;
    private static final double MARGIN = 24;
    private static final double MOST_PER_MM = 1.5;
    private static final double INCH_MM = 25.4;
    private static final double HALF = 0.5;

    private static final double SET_WIDTH_Y = 78;
    private static final double CAR_WIDTH_Y = 106;
    private static final double FLANGE_Y = 120;
    private static final double SEAT_Y = 138;
    private static final double WELL_Y = 156;
    private static final double CALIPER_Y = 168;
    private static final double CALIPER_HIGH = 52;
    private static final double CALIPER_WIDE = 104;
    private static final double BREAK_Y = 236;
    private static final double SET_OFFSET_Y = 256;
    private static final double CAR_OFFSET_Y = 282;
    private static final double AXLE_Y = 368;
    private static final double METAL = 5;

    /** Seat of the bead and slope to the well, mm; as usual, for the picture only. */
    private static final double SEAT_MM = 20;

    private static final double WELL_MM = 32;
    private static final int BORE_DIGITS = 4;

    private final SetFit fit;
    private final Reader reader;
    private final Labels labels;
    private final double perMm;
    private final double faceX;

    private WheelSection(SetFit fit, Reader reader) {
        this.fit = fit;
        this.reader = reader;
        this.labels = reader.labels(AgeOfTyre.ROOM);
        double inwardMm = Math.max(inwardMm(fit.car()), inwardMm(fit.wheel()));
        double outwardMm = Math.max(outwardMm(fit.car()), outwardMm(fit.wheel()));
        perMm = Math.min(MOST_PER_MM, (WIDTH - 2 * MARGIN) / (inwardMm + outwardMm));
        faceX = WIDTH * HALF + (inwardMm - outwardMm) * HALF * perMm;
    }

    public static String svg(SetFit fit, Reader reader) {
        return new WheelSection(fit, reader).draw();
    }

    private String draw() {
        var inner = moved(fit.inwardMm(), fit.inwardMm() >= 0);
        var outer = moved(fit.outwardMm(), fit.outwardMm() < 0);
        var gap = fit.caliperGapMm();
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "section",
                        "inner",
                        inner,
                        "outer",
                        outer,
                        "bore",
                        fine(fit.wheel().boreMm()),
                        "hub",
                        fine(fit.car().boreMm()),
                        "gap",
                        gap == null ? labels.of("gap-not-measured") : labels.of("caliper-gap", "gap", length(gap))));
        svg.words(8, 18, 15, Anchor.START, Palette.INK, true, labels.of("inner-edge", "moved", inner));
        svg.words(8, 42, 15, Anchor.START, Palette.INK, true, labels.of("outer-edge", "moved", outer));
        svg.words(WIDTH - 8.0, 18, 14, Anchor.END, Palette.OCHRE, true, "— " + labels.of("this-set"));
        svg.words(WIDTH - 8.0, 42, 14, Anchor.END, Palette.SLATE, true, "- - " + labels.of("cars-own"));
        width(svg, fit.wheel(), SET_WIDTH_Y, Palette.OCHRE);
        width(svg, fit.car(), CAR_WIDTH_Y, Palette.SLATE);
        hub(svg);
        rim(svg, fit.wheel(), Palette.OCHRE, METAL, "");
        rim(svg, fit.car(), Palette.SLATE, 2, "6 4");
        disc(svg);
        caliper(svg, gap);
        offset(svg, fit.wheel(), SET_OFFSET_Y, Palette.OCHRE);
        offset(svg, fit.car(), CAR_OFFSET_Y, Palette.SLATE);
        svg.line(8, AXLE_Y, WIDTH - 8.0, AXLE_Y, Palette.INK, 1, "14 4 2 4");
        svg.words(8, HEIGHT - 8.0, 14, Anchor.START, Palette.INK, false, "← " + labels.of("inward"));
        svg.words(WIDTH - 8.0, HEIGHT - 8.0, 14, Anchor.END, Palette.INK, false, labels.of("outward") + " →");
        return svg.close();
    }

    private void width(Svg svg, Mounting mounting, double y, String colour) {
        dimension(svg, innerX(mounting), outerX(mounting), y, colour);
        svg.words(
                (innerX(mounting) + outerX(mounting)) * HALF,
                y - 6,
                14,
                Anchor.MIDDLE,
                colour,
                true,
                "%sJ, %s"
                        .formatted(
                                reader.say(Amount.exact(mounting.rimCode(), "")),
                                reader.say(length(mounting.rimCode() * INCH_MM))));
    }

    /** From the rim's middle to the hub's face. */
    private void offset(Svg svg, Mounting mounting, double y, String colour) {
        double middle = faceX - mounting.offsetMm() * perMm;
        svg.line(middle, FLANGE_Y, middle, y + 4, colour, 1, "10 3 2 3");
        dimension(svg, middle, faceX, y, colour);
        svg.words(
                Math.min(middle, faceX) - 9,
                y + 5,
                15,
                Anchor.END,
                colour,
                true,
                "ET" + reader.say(Amount.exact(mounting.offsetMm(), "")));
    }

    private void hub(Svg svg) {
        double pilot = fit.car().boreMm() * HALF * perMm;
        svg.rectangle(faceX - 22, BREAK_Y + 14, 22, AXLE_Y - BREAK_Y - 14, 0, Palette.SHADE, Palette.SLATE);
        svg.rectangle(faceX, AXLE_Y - pilot, 18, pilot, 0, Palette.SHADE, Palette.SLATE);
        double wordsX = Math.min(faceX + 26, WIDTH - 120.0);
        svg.words(
                wordsX,
                AXLE_Y - 48,
                14,
                Anchor.START,
                Palette.OCHRE,
                true,
                labels.of("bore", "width", fine(fit.wheel().boreMm())));
        svg.words(
                wordsX,
                AXLE_Y - 29,
                14,
                Anchor.START,
                Palette.SLATE,
                true,
                labels.of("hub", "width", fine(fit.car().boreMm())));
        if (fit.ringMm() > 0) {
            svg.words(wordsX, AXLE_Y - 10, 14, Anchor.START, Palette.INK, false, labels.of("ring", "width", fine(fit.ringMm())));
        }
    }

    private void rim(Svg svg, Mounting mounting, String colour, double thick, String dashes) {
        double inner = innerX(mounting);
        double outer = outerX(mounting);
        double[][] points = {
            {inner, FLANGE_Y},
            {inner, SEAT_Y},
            {inner + SEAT_MM * perMm, SEAT_Y},
            {inner + WELL_MM * perMm, WELL_Y},
            {outer - WELL_MM * perMm, WELL_Y},
            {outer - SEAT_MM * perMm, SEAT_Y},
            {outer, SEAT_Y},
            {outer, FLANGE_Y}
        };
        for (int i = 1; i < points.length; i++) {
            svg.line(points[i - 1][0], points[i - 1][1], points[i][0], points[i][1], colour, thick, dashes);
        }
    }

    /** From the well down to the hub's face and to the bore, broken where its length is not known. */
    private void disc(Svg svg) {
        double spokeX = spokeX();
        double boreY = AXLE_Y - fit.wheel().boreMm() * HALF * perMm;
        double padX = faceX + METAL * HALF;
        svg.line(spokeX, WELL_Y, spokeX, BREAK_Y - 8, Palette.OCHRE, METAL, "");
        svg.path(
                String.format(Locale.ROOT, "M%.1f %.1f l6 5 l-12 4 l6 5", spokeX, BREAK_Y - 8),
                "none",
                Palette.OCHRE,
                2);
        svg.line(spokeX, BREAK_Y + 6, spokeX, BREAK_Y + 10, Palette.OCHRE, METAL, "");
        svg.line(spokeX, BREAK_Y + 9, padX, BREAK_Y + 22, Palette.OCHRE, METAL, "");
        svg.line(padX, BREAK_Y + 20, padX, boreY, Palette.OCHRE, METAL, "");
    }

    private void caliper(Svg svg, @Nullable Double gapMm) {
        if (gapMm == null) {
            svg.words(spokeX() - 12, CALIPER_Y + 30, 14, Anchor.END, Palette.INK, false, labels.of("gap-not-measured"));
            return;
        }
        var colour = gapMm >= SetFit.LEAST_CALIPER_GAP_MM ? Palette.SLATE : Palette.PLUM;
        double spokeBack = spokeX() - METAL * HALF;
        double right = spokeBack - gapMm * perMm;
        svg.rectangle(right - CALIPER_WIDE, CALIPER_Y, CALIPER_WIDE, CALIPER_HIGH, 6, Palette.SHADE, Palette.SLATE);
        double middle = right - CALIPER_WIDE * HALF;
        svg.words(middle, CALIPER_Y + 21, 14, Anchor.MIDDLE, Palette.INK, false, labels.of("caliper"));
        svg.words(middle, CALIPER_Y + 41, 13, Anchor.MIDDLE, colour, true, labels.of("gap", "gap", length(gapMm)));
        double y = CALIPER_Y + CALIPER_HIGH - 8;
        svg.line(right, y, spokeBack, y, colour, 3, "");
    }

    private double spokeX() {
        return Math.max(faceX + METAL, outerX(fit.wheel()) - WELL_MM * perMm);
    }

    private double innerX(Mounting mounting) {
        return faceX - inwardMm(mounting) * perMm;
    }

    private double outerX(Mounting mounting) {
        return faceX + outwardMm(mounting) * perMm;
    }

    private static double inwardMm(Mounting mounting) {
        return mounting.rimCode() * INCH_MM * HALF + mounting.offsetMm();
    }

    private static double outwardMm(Mounting mounting) {
        return mounting.rimCode() * INCH_MM * HALF - mounting.offsetMm();
    }

    private static void dimension(Svg svg, double fromX, double toX, double y, String colour) {
        svg.line(fromX, y, toX, y, colour, 1.5, "");
        svg.line(fromX, y - 5, fromX, y + 5, colour, 1.5, "");
        svg.line(toX, y - 5, toX, y + 5, colour, 1.5, "");
    }

    private static Amount length(double millimetres) {
        return new Amount(millimetres, "mm", 0);
    }

    /** Bores differ by tenths, which whole millimetres would hide. */
    private static Amount fine(double millimetres) {
        return Amount.significant(millimetres, "mm", BORE_DIGITS);
    }

    private String moved(double millimetres, boolean inward) {
        return labels.of(inward ? "moved-inward" : "moved-outward", "way", length(Math.abs(millimetres)));
    }
}
