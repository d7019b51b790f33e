package cornerbook.app.picture.air;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.battery.BatteryHealth;
import java.util.Locale;

/** Measured cranking current as a share of the rating, with the shares from which a battery is sound and unwatched. */
public final class ShareOfRating {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 110;
    private static final double LEFT_X = 14;
    private static final double RIGHT_X = 406;
    private static final double END = 1.1;

    private ShareOfRating() {}

    /** The picture. */
    public static String svg(BatteryHealth health) {
        var words = String.format(Locale.ROOT, "%.0f %% of the rating", health.share() * 100);
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                words
                        + ", at its end under %.0f %%, watched from there, sound from %.0f %%"
                                .formatted(BatteryHealth.SOUND_SHARE * 100, BatteryHealth.WATCH_SHARE * 100));
        svg.words(LEFT_X, 20, 14, Anchor.START, Palette.INK, true, words);
        svg.rectangle(LEFT_X, 34, RIGHT_X - LEFT_X, 28, 0, Palette.SHADE, Palette.HAIRLINE);
        var colour = switch (health.judgement()) {
            case SOUND -> Palette.SLATE;
            case WATCH -> Palette.OCHRE;
            case REPLACE -> Palette.PLUM;
        };
        svg.rectangle(LEFT_X, 38, Math.max(2, x(health.share()) - LEFT_X), 20, 3, colour, colour);
        mark(svg, BatteryHealth.SOUND_SHARE, Anchor.END, "at its end under");
        mark(svg, BatteryHealth.WATCH_SHARE, Anchor.START, "sound from");
        return svg.close();
    }

    private static void mark(Svg svg, double share, Anchor anchor, String words) {
        double x = x(share);
        svg.line(x, 28, x, 68, Palette.PAPER, 5, "");
        svg.line(x, 28, x, 68, Palette.PLUM, 2, "6 3");
        svg.words(x, 86, 12, anchor, Palette.INK, false, "%s %.0f %%".formatted(words, share * 100));
    }

    private static double x(double share) {
        return LEFT_X + (RIGHT_X - LEFT_X) * Math.min(share, END) / END;
    }
}
