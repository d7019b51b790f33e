package cornerbook.app.picture.tyre;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.TyreSize;
import cornerbook.words.Reader;

/** Two tyre sizes side by side on one ground, to scale, and what the speedometer shows against the true speed. */
public final class TwoTyres {
    private static final int WIDTH = 440;
    private static final int HEIGHT = 330;
    private static final double GROUND_Y = 214;
    private static final double LARGEST = 190;
    private static final double NEEDLE_Y = 288;
    private static final double LEFT_X = 20;
    private static final double RIGHT_X = 420;

    private TwoTyres() {}

    /** The picture. */
    public static String svg(SizeComparison comparison, Reader reader) {
        var labels = reader.labels(AgeOfTyre.ROOM);
        double scale = LARGEST
                / Math.max(
                        comparison.placard().overallDiameterMm(),
                        comparison.other().overallDiameterMm());
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "two-tyres",
                        "placard",
                        comparison.placard().toString(),
                        "placardHeight",
                        new Amount(comparison.placard().overallDiameterMm(), "mm", 0),
                        "other",
                        comparison.other().toString(),
                        "otherHeight",
                        new Amount(comparison.other().overallDiameterMm(), "mm", 0),
                        "shown",
                        Amount.of(comparison.indicatedKmh(), "km/h"),
                        "trueSpeed",
                        Amount.of(comparison.trueKmh(), "km/h")));
        tyre(svg, 110, comparison.placard(), scale, Palette.SLATE, reader);
        tyre(svg, 330, comparison.other(), scale, Palette.OCHRE, reader);
        svg.line(10, GROUND_Y, WIDTH - 10.0, GROUND_Y, Palette.INK, 2.5, "");
        double level = GROUND_Y - comparison.placard().overallDiameterMm() * scale;
        svg.line(110, level, 430, level, Palette.SLATE, 1.2, "4 3");
        speed(svg, comparison, reader);
        return svg.close();
    }

    private static void tyre(Svg svg, double x, TyreSize size, double scale, String colour, Reader reader) {
        double radius = size.overallDiameterMm() / 2 * scale;
        double y = GROUND_Y - radius;
        double rim = size.rimDiameterMm() / 2 * scale;
        svg.circle(x, y, radius, colour, "none", 0, "");
        svg.circle(x, y, rim, Palette.PAPER, Palette.HAIRLINE, 2, "");
        svg.words(x, y + 6, 15, Anchor.MIDDLE, Palette.INK, false,
                reader.say(new Amount(size.overallDiameterMm(), "mm", 0)));
        svg.words(x, GROUND_Y + 20, 14, Anchor.MIDDLE, colour, true, size.toString());
    }

    /** A scale of ten per cent either way about the speed shown. */
    private static void speed(Svg svg, SizeComparison comparison, Reader reader) {
        var labels = reader.labels(AgeOfTyre.ROOM);
        double share = Math.clamp(comparison.circumferencePercent() / 100, -0.1, 0.1);
        double middle = (LEFT_X + RIGHT_X) / 2;
        svg.line(LEFT_X, NEEDLE_Y, RIGHT_X, NEEDLE_Y, Palette.HAIRLINE, 3, "");
        for (int percent = -10; percent <= 10; percent += 5) {
            double x = middle + (RIGHT_X - LEFT_X) / 2 * percent / 10.0;
            svg.line(x, NEEDLE_Y - 5, x, NEEDLE_Y + 5, Palette.SLATE, 1.5, "");
            svg.words(
                    Math.clamp(x, LEFT_X + 14, RIGHT_X - 14),
                    NEEDLE_Y + 32,
                    12,
                    Anchor.MIDDLE,
                    Palette.INK,
                    false,
                    percent == 0
                            ? labels.of("shown")
                            : reader.say(new Margin(percent, "%", 0, true)));
        }
        double x = middle + (RIGHT_X - LEFT_X) / 2 * share / 0.1;
        svg.line(middle, NEEDLE_Y, x, NEEDLE_Y, Palette.PLUM, 5, "");
        svg.circle(x, NEEDLE_Y, 7, Palette.PLUM, Palette.PAPER, 2, "");
        svg.words(
                Math.clamp(x, 90, WIDTH - 90.0),
                NEEDLE_Y - 14,
                13,
                Anchor.MIDDLE,
                Palette.PLUM,
                true,
                labels.of("true-speed", "speed", Amount.of(comparison.trueKmh(), "km/h")));
    }
}
