package cornerbook.app.picture.lift;

import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.lift.LiftStack;
import cornerbook.words.Reader;

/** The heights under a lift point from the side, to scale: arm and adapter on the left, point, clearance and blocks of the car on the right. */
public final class LiftFromSide {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 270;
    private static final double FLOOR_Y = 230;
    private static final double TOP_Y = 36;

    private LiftFromSide() {}

    /** The picture. */
    public static String svg(LiftStack stack, Reader reader) {
        var labels = reader.labels(LiftFromAbove.ROOM);
        double highest = Math.max(
                stack.armMm() + stack.adapterMm(), Math.max(stack.pointMm(), stack.clearanceMm()) + stack.blocksMm());
        double scale = (FLOOR_Y - TOP_Y) / highest;
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "heights",
                        "arm",
                        height(stack.armMm()),
                        "adapter",
                        height(stack.adapterMm()),
                        "point",
                        height(stack.pointMm()),
                        "clearance",
                        height(stack.clearanceMm()),
                        "blocks",
                        height(stack.blocksMm()),
                        "under",
                        stack.goesUnder()));
        double blocks = stack.blocksMm() * scale;
        double pointY = FLOOR_Y - blocks - stack.pointMm() * scale;
        double wayY = FLOOR_Y - blocks - stack.clearanceMm() * scale;
        // The car: its lift point at the left, its lowest part over the arm's way at the right.
        svg.path(
                "M150 %sL150 %sL236 %sL236 %sL410 %sL410 %sZ"
                        .formatted(
                                Svg.number(TOP_Y - 30),
                                Svg.number(pointY),
                                Svg.number(pointY),
                                Svg.number(wayY),
                                Svg.number(wayY),
                                Svg.number(TOP_Y - 30)),
                Palette.SHADE,
                Palette.SLATE,
                2);
        double arm = stack.armMm() * scale;
        double adapter = stack.adapterMm() * scale;
        double armY = FLOOR_Y - arm;
        var colour = stack.goesUnder() ? Palette.OCHRE : Palette.PLUM;
        svg.rectangle(165, armY, 250, Math.min(arm, 22), 3, Palette.SLATE, Palette.SLATE);
        svg.rectangle(185, armY - adapter, 36, Math.max(adapter, 2), 2, colour, colour);
        svg.line(10, FLOOR_Y, WIDTH - 10.0, FLOOR_Y, Palette.INK, 3, "");
        if (blocks > 0) {
            svg.rectangle(26, FLOOR_Y - blocks, 70, blocks, 2, Palette.HAIRLINE, Palette.SLATE);
            svg.words(
                    61,
                    FLOOR_Y - blocks - 6,
                    12,
                    Anchor.MIDDLE,
                    Palette.INK,
                    false,
                    labels.of("blocks", "height", height(stack.blocksMm())));
        }
        boolean pointAbove = pointY < armY - adapter;
        height(svg, pointY, pointAbove, Palette.INK, labels.of("lift-point", "height", height(stack.pointMm())));
        height(
                svg,
                armY - adapter,
                !pointAbove,
                colour,
                labels.of("arm-adapter", "height", height(stack.armMm() + stack.adapterMm())));
        svg.words(
                404,
                wayY - 8,
                12,
                Anchor.END,
                Palette.INK,
                false,
                labels.of("clearance", "height", height(stack.clearanceMm())));
        svg.words(
                WIDTH / 2.0,
                FLOOR_Y + 26,
                15,
                Anchor.MIDDLE,
                colour,
                true,
                stack.goesUnder()
                        ? labels.of("to-spare", "height", height(stack.spareMm()))
                        : labels.of("blocks-needed", "height", height(stack.neededMm())));
        return svg.close();
    }

        private static Amount height(double heightMm) {
        return new Amount(heightMm, "mm", 0);
    }

    private static void height(Svg svg, double y, boolean above, String colour, String words) {
        svg.line(120, y, 186, y, colour, 2, "5 3");
        svg.words(146, above ? y - 6 : y + 16, 12, Anchor.END, colour, true, words);
    }
}
