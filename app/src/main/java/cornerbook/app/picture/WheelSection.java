package cornerbook.app.picture;

import cornerbook.app.picture.Svg.Anchor;
import cornerbook.app.unit.Shown;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.tyre.SetFit;

/** Section through hub and rim: the wheel of the set to scale against the one that fits the car, outward to the right. */
final class WheelSection {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 270;
    private static final double FACE_X = 262;
    private static final double MOST_PER_MM = 1.05;
    private static final double ROOM_INWARD = 250;
    private static final double ROOM_OUTWARD = 146;
    private static final double BARREL_Y = 70;
    private static final double HUB_Y = 216;
    private static final double FLANGE = 18;
    private static final double INCH_MM = 25.4;

    private final SetFit fit;
    private final double perMm;

    private WheelSection(SetFit fit) {
        this.fit = fit;
        double inwardMm = Math.max(
                halfMm(fit.car()) + fit.car().offsetMm(),
                halfMm(fit.wheel()) + fit.wheel().offsetMm());
        double outwardMm = Math.max(
                halfMm(fit.car()) - fit.car().offsetMm(),
                halfMm(fit.wheel()) - fit.wheel().offsetMm());
        perMm = Math.min(
                MOST_PER_MM, Math.min(ROOM_INWARD / Math.max(1, inwardMm), ROOM_OUTWARD / Math.max(1, outwardMm)));
    }

    static String svg(SetFit fit, Shown shown) {
        return new WheelSection(fit).draw(shown);
    }

    private String draw(Shown shown) {
        var inner = moved(fit.inwardMm(), "inward", "outward", shown);
        var outer = moved(fit.outwardMm(), "outward", "inward", shown);
        var gap = fit.caliperGapMm();
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                "Section of the wheel: inner edge %s, outer edge %s, bore %s on a hub of %s%s"
                        .formatted(
                                inner,
                                outer,
                                shown.show(fit.wheel().boreMm(), "mm"),
                                shown.show(fit.car().boreMm(), "mm"),
                                gap == null ? "" : ", caliper gap " + shown.show(gap, "mm")));
        hub(svg);
        if (gap != null) {
            boolean enough = gap >= SetFit.LEAST_CALIPER_GAP_MM;
            svg.rectangle(FACE_X - 62 - gap * perMm, 106, 54, 62, 6, Palette.SHADE, Palette.SLATE);
            svg.words(
                    FACE_X + 12,
                    142,
                    12,
                    Anchor.START,
                    enough ? Palette.SLATE : Palette.PLUM,
                    true,
                    "caliper gap " + shown.show(gap, "mm"));
        }
        rim(svg, fit.car(), Palette.SLATE, "5 4");
        rim(svg, fit.wheel(), Palette.OCHRE, "");
        svg.words(12, 20, 13, Anchor.START, Palette.OCHRE, true, "— this set");
        svg.words(12, 38, 13, Anchor.START, Palette.SLATE, true, "- - the car's");
        svg.words(WIDTH - 12, 20, 13, Anchor.END, Palette.INK, true, "outer edge " + outer);
        svg.words(WIDTH - 12, 38, 13, Anchor.END, Palette.INK, true, "inner edge " + inner);
        svg.words(
                FACE_X + 24,
                HUB_Y + 6,
                12,
                Anchor.START,
                Palette.INK,
                false,
                "bore %s".formatted(shown.show(fit.wheel().boreMm(), "mm")));
        svg.words(
                FACE_X + 24,
                HUB_Y + 24,
                12,
                Anchor.START,
                Palette.INK,
                false,
                "hub %s".formatted(shown.show(fit.car().boreMm(), "mm")));
        return svg.close();
    }

    private void hub(Svg svg) {
        svg.rectangle(FACE_X - 26, HUB_Y - 40, 26, 80, 3, Palette.SHADE, Palette.SLATE);
        double pilot = fit.car().boreMm() * perMm / 2;
        svg.rectangle(FACE_X, HUB_Y - pilot / 1.4, 16, pilot * 2 / 1.4, 2, Palette.SHADE, Palette.SLATE);
    }

    /** The disc stands on the hub's face; the rim's middle lies inward of it by the offset. */
    private void rim(Svg svg, Mounting mounting, String colour, String dashes) {
        double half = halfMm(mounting);
        double innerX = FACE_X - (mounting.offsetMm() + half) * perMm;
        double outerX = FACE_X - (mounting.offsetMm() - half) * perMm;
        double boreY = HUB_Y - mounting.boreMm() * perMm / 2 / 1.4;
        svg.line(innerX, BARREL_Y, outerX, BARREL_Y, colour, 3, dashes);
        svg.line(innerX, BARREL_Y, innerX, BARREL_Y - FLANGE, colour, 3, dashes);
        svg.line(outerX, BARREL_Y, outerX, BARREL_Y - FLANGE, colour, 3, dashes);
        svg.line(FACE_X + 3, BARREL_Y, FACE_X + 3, boreY, colour, 3, dashes);
    }

    private static double halfMm(Mounting mounting) {
        return mounting.rimCode() * INCH_MM / 2;
    }

    private static String moved(double millimetres, String positive, String negative, Shown shown) {
        return "%s %s".formatted(shown.show(Math.abs(millimetres), "mm"), millimetres < 0 ? negative : positive);
    }
}
