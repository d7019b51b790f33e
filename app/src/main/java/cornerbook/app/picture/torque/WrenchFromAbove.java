package cornerbook.app.picture.torque;

import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.torque.WrenchSetting;
import cornerbook.words.Reader;

/** A torque wrench from above with its adapter at its angle, to scale: grip, drive, fastener, and both torques. */
public final class WrenchFromAbove {
    private static final int WIDTH = 420;
    private static final double LEFT_X = 40;
    private static final double RIGHT_X = 380;

    private WrenchFromAbove() {}

    /** The picture. */
    public static String svg(WrenchSetting setting, Reader reader) {
        var labels = reader.labels(ClampLoadBar.ROOM);
        var adapter = new Amount(setting.adapterMm(), "mm", 0);
        var turned = new Amount(setting.angleDeg(), "", 0);
        var torque = Amount.of(setting.torqueNm(), "N·m");
        var set = Amount.of(setting.settingNm(), "N·m");
        var length = new Amount(setting.lengthMm(), "mm", 0);
        double angle = Math.toRadians(setting.angleDeg());
        double along = setting.adapterMm() * Math.cos(angle);
        double across = setting.adapterMm() * Math.sin(angle);
        double scale = (RIGHT_X - LEFT_X) / Math.max(setting.lengthMm(), setting.lengthMm() + along);
        double driveX = LEFT_X + setting.lengthMm() * scale;
        double nutX = driveX + along * scale;
        double up = across * scale;
        double y = 70 + up;
        double nutY = y - up;
        int height = (int) Math.ceil(y + 78);
        var svg = new Svg(
                WIDTH,
                height,
                labels.of(
                        "wrench",
                        "length",
                        length,
                        "adapter",
                        adapter,
                        "angle",
                        turned,
                        "set",
                        set,
                        "torque",
                        torque));
        svg.line(LEFT_X, y, driveX, y, Palette.SLATE, 9, "");
        svg.line(LEFT_X - 22, y, LEFT_X + 34, y, Palette.SLATE, 20, "");
        svg.line(LEFT_X, y - 9, LEFT_X, y + 9, Palette.PAPER, 2, "");
        if (setting.adapterMm() > 0) {
            svg.line(driveX, y, nutX, nutY, Palette.OCHRE, 12, "");
        }
        svg.rectangle(driveX - 8, y - 8, 16, 16, 2, Palette.PAPER, Palette.SLATE);
        svg.circle(nutX, nutY, 15, Palette.PAPER, Palette.PLUM, 5, "");
        svg.circle(nutX, nutY, 4, Palette.PLUM, "none", 0, "");
        dimension(svg, LEFT_X, driveX, y + 30, reader.say(length));
        svg.words(
                LEFT_X - 22,
                y + 66,
                15,
                Anchor.START,
                Palette.SLATE,
                true,
                labels.of("set", "torque", set));
        svg.words(
                Math.clamp(nutX, 70, WIDTH - 60.0),
                nutY - 28,
                15,
                Anchor.MIDDLE,
                Palette.PLUM,
                true,
                reader.say(torque));
        svg.words(
                RIGHT_X + 34,
                y + 66,
                14,
                Anchor.END,
                Palette.OCHRE,
                false,
                labels.of("adapter", "adapter", adapter, "angle", turned));
        return svg.close();
    }

    private static void dimension(Svg svg, double fromX, double toX, double y, String words) {
        svg.line(fromX, y, toX, y, Palette.SLATE, 1, "");
        svg.line(fromX, y - 5, fromX, y + 5, Palette.SLATE, 1, "");
        svg.line(toX, y - 5, toX, y + 5, Palette.SLATE, 1, "");
        svg.rectangle((fromX + toX) / 2 - 44, y - 10, 88, 20, 0, Palette.PAPER, Palette.PAPER);
        svg.words((fromX + toX) / 2, y + 5, 13, Anchor.MIDDLE, Palette.INK, false, words);
    }
}
