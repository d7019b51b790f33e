package cornerbook.app.picture.air;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.HealthTest;
import cornerbook.core.say.Amount;
import cornerbook.words.Reader;

/** Measured cranking current as a share of the rating, with the shares from which a battery is sound and unwatched. */
public final class ShareOfRating {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 110;
    private static final double LEFT_X = 14;
    private static final double RIGHT_X = 406;
    private static final double END = 1.1;
    private static final double END_SHARE = HealthTest.CRANKING_CURRENT.leastShare();
    private static final double SOUND_SHARE = HealthTest.CRANKING_CURRENT.watchShare();

    private ShareOfRating() {}

    /** The picture. */
    public static String svg(BatteryHealth health, Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        var words = labels.of("share-of-rating", "share", percent(health.share()));
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of("share-described", "share", words, "end", percent(END_SHARE), "sound", percent(SOUND_SHARE)));
        svg.words(LEFT_X, 20, 14, Anchor.START, Palette.INK, true, words);
        svg.rectangle(LEFT_X, 34, RIGHT_X - LEFT_X, 28, 0, Palette.SHADE, Palette.HAIRLINE);
        var colour = switch (health.judgement()) {
            case SOUND -> Palette.SLATE;
            case WATCH -> Palette.OCHRE;
            case REPLACE -> Palette.PLUM;
        };
        svg.rectangle(LEFT_X, 38, Math.max(2, x(health.share()) - LEFT_X), 20, 3, colour, colour);
        mark(svg, END_SHARE, Anchor.END, labels.of("at-its-end-under", "share", percent(END_SHARE)));
        mark(svg, SOUND_SHARE, Anchor.START, labels.of("sound-from", "share", percent(SOUND_SHARE)));
        return svg.close();
    }

    private static void mark(Svg svg, double share, Anchor anchor, String words) {
        double x = x(share);
        svg.line(x, 28, x, 68, Palette.PAPER, 5, "");
        svg.line(x, 28, x, 68, Palette.PLUM, 2, "6 3");
        svg.words(x, 86, 12, anchor, Palette.INK, false, words);
    }

    private static Amount percent(double share) {
        return Amount.of(share * 100, "%");
    }

    private static double x(double share) {
        return LEFT_X + (RIGHT_X - LEFT_X) * Math.min(share, END) / END;
    }
}
