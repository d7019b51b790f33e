package cornerbook.app.picture.air;

import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.air.LeakRate;
import cornerbook.words.Reader;

/** Two readings brought to 20 °C over the days between them, with the gauge's error and the loss that is called a leak. */
public final class PressureOverDays {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 226;
    private static final double LEFT_X = 46;
    private static final double RIGHT_X = 374;
    private static final double TOP_Y = 44;
    private static final double BOTTOM_Y = 180;
    private static final double DAYS_PER_MONTH = 30;
    /** The temperature that both readings are brought to. */
    private static final Amount BASE = Amount.of(20, "°C");

    private final LeakRate leak;
    private final double leakKpa;
    private final double lowKpa;
    private final double highKpa;

    private PressureOverDays(LeakRate leak) {
        this.leak = leak;
        leakKpa = leak.firstKpa() - LeakRate.LEAK_FROM_KPA * leak.days() / DAYS_PER_MONTH;
        double least = Math.min(Math.min(leak.secondKpa(), leakKpa), leak.firstKpa()) - leak.gaugeErrorKpa();
        double most = Math.max(leak.firstKpa(), leak.secondKpa()) + leak.gaugeErrorKpa();
        double room = 0.12 * (most - least);
        lowKpa = least - room;
        highKpa = most + room;
    }

    public static String svg(LeakRate leak, Reader reader) {
        return new PressureOverDays(leak).draw(reader);
    }

    private String draw(Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        long days = Math.round(leak.days());
        var first = Amount.of(leak.firstKpa(), "kPa");
        var second = Amount.of(leak.secondKpa(), "kPa");
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "over-days",
                        "base",
                        BASE,
                        "first",
                        first,
                        "n",
                        days,
                        "second",
                        second,
                        "loss",
                        Amount.of(LeakRate.LEAK_FROM_KPA, "kPa")));
        var colour = leak.answer() == LeakRate.Answer.SLOW_LEAK ? Palette.PLUM : Palette.SLATE;
        svg.words(LEFT_X, 18, 13, Anchor.START, Palette.OCHRE, true, "– – " + labels.of("loss-of-leak"));
        svg.line(LEFT_X, y(leak.firstKpa()), RIGHT_X, y(leakKpa), Palette.OCHRE, 2, "7 3");
        svg.line(LEFT_X, y(leak.firstKpa()), RIGHT_X, y(leak.secondKpa()), colour, 3, "");
        reading(svg, LEFT_X, leak.firstKpa(), colour);
        reading(svg, RIGHT_X, leak.secondKpa(), colour);
        svg.words(LEFT_X + 12, y(leak.firstKpa()) - 10, 13, Anchor.START, Palette.INK, true, reader.say(first));
        svg.words(RIGHT_X - 12, y(leak.secondKpa()) + 18, 13, Anchor.END, Palette.INK, true, reader.say(second));
        svg.line(LEFT_X - 26, BOTTOM_Y, RIGHT_X + 26, BOTTOM_Y, Palette.HAIRLINE, 1.5, "");
        svg.words(LEFT_X, BOTTOM_Y + 20, 12, Anchor.MIDDLE, Palette.INK, false, labels.of("first"));
        svg.words(RIGHT_X, BOTTOM_Y + 20, 12, Anchor.MIDDLE, Palette.INK, false, labels.of("days", "n", days));
        svg.words(
                WIDTH / 2.0,
                BOTTOM_Y + 38,
                12,
                Anchor.MIDDLE,
                Palette.INK,
                false,
                labels.of("both-at", "base", BASE));
        return svg.close();
    }

    private void reading(Svg svg, double x, double kpa, String colour) {
        double up = y(kpa + leak.gaugeErrorKpa());
        double down = y(kpa - leak.gaugeErrorKpa());
        svg.line(x, up, x, down, colour, 2, "");
        svg.line(x - 6, up, x + 6, up, colour, 2, "");
        svg.line(x - 6, down, x + 6, down, colour, 2, "");
        svg.circle(x, y(kpa), 5, Palette.PAPER, colour, 2.5, "");
    }

    private double y(double kpa) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * (kpa - lowKpa) / (highKpa - lowKpa);
    }
}
