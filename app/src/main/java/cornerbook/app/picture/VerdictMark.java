package cornerbook.app.picture;

import cornerbook.core.finding.Verdict;
import cornerbook.words.Reader;

/**
 * The mark of a verdict: a brake disc whose fill is the life left. Holds has a whole rim, Runs out a broken one, Spent
 * is empty, Unsafe is barred; the shape says it without the colour.
 */
public final class VerdictMark {
    private VerdictMark() {}

    /**
     * Draws the mark by itself.
     *
     * @param lifeLeft share of the usable life, 0 to 1
     * @param sizePx width and height
     */
    public static String svg(Verdict verdict, double lifeLeft, int sizePx, Reader reader) {
        var svg = new Svg(sizePx, sizePx, reader.say(verdict));
        draw(svg, verdict, lifeLeft, sizePx / 2.0, sizePx / 2.0, sizePx / 2.0 - 1);
        return svg.close();
    }

    public static void draw(Svg svg, Verdict verdict, double lifeLeft, double x, double y, double radius) {
        var colour = Palette.of(verdict);
        double rimWidth = Math.max(1.5, radius * 0.14);
        double rimRadius = radius - rimWidth / 2;
        double faceRadius = radius - rimWidth * 1.9;
        double sixteenth = 2 * Math.PI * rimRadius / 16;
        var dashes = verdict == Verdict.RUNS_OUT ? Svg.number(sixteenth * 1.3) + " " + Svg.number(sixteenth * 0.7) : "";
        svg.circle(x, y, rimRadius, Palette.PAPER, colour, rimWidth, dashes);
        if (verdict == Verdict.HOLDS || verdict == Verdict.RUNS_OUT) {
            fill(svg, colour, lifeLeft, x, y, faceRadius);
        }
        svg.circle(x, y, radius * 0.22, Palette.PAPER, colour, rimWidth * 0.7, "");
        if (verdict == Verdict.UNSAFE) {
            double reach = radius * 0.71;
            svg.line(x - reach, y + reach, x + reach, y - reach, Palette.PAPER, rimWidth * 3.6, "");
            svg.line(x - reach, y + reach, x + reach, y - reach, colour, rimWidth * 2, "");
        }
    }

    /** Clockwise from the top, as far as life is left. */
    private static void fill(Svg svg, String colour, double lifeLeft, double x, double y, double radius) {
        if (lifeLeft >= 0.995) {
            svg.circle(x, y, radius, colour, "none", 0, "");
        } else if (lifeLeft > 0.005) {
            double angle = 2 * Math.PI * lifeLeft;
            svg.path(
                    "M%s %sL%s %sA%s %s 0 %s 1 %s %sZ"
                            .formatted(
                                    Svg.number(x),
                                    Svg.number(y),
                                    Svg.number(x),
                                    Svg.number(y - radius),
                                    Svg.number(radius),
                                    Svg.number(radius),
                                    lifeLeft > 0.5 ? 1 : 0,
                                    Svg.number(x + radius * Math.sin(angle)),
                                    Svg.number(y - radius * Math.cos(angle))),
                    colour,
                    "none",
                    0);
        }
    }
}
