package cornerbook.app.picture.tyre;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.say.Amount;
import cornerbook.core.tyre.SizeMeaning;
import cornerbook.words.Reader;
import java.util.Locale;
import java.util.Optional;

/** One tyre of a size from the side and in section on its measuring rim, both to one scale, with its measures. */
public final class TyreBySize {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 300;
    private static final double GROUND_Y = 246;
    private static final double HIGHEST = 206;
    private static final double SIDE_X = 150;
    private static final double SECTION_X = 330;
    private static final double INCH_MM = 25.4;
    private static final double CORNER = 12;

    private final SizeMeaning meaning;
    private final double rimCode;
    private final double perMm;

    private TyreBySize(SizeMeaning meaning, double rimCode) {
        this.meaning = meaning;
        this.rimCode = rimCode;
        perMm = HIGHEST / meaning.overallDiameterMm();
    }

    /** Empty where no table tells the measuring rim. */
    public static Optional<String> find(SizeMeaning meaning, Reader reader) {
        return Optional.ofNullable(meaning.measuringRimCode())
                .map(rimCode -> new TyreBySize(meaning, rimCode).draw(reader));
    }

    private String draw(Reader reader) {
        var labels = reader.labels(AgeOfTyre.ROOM);
        var rimWidth = Amount.exact(rimCode, "");
        var height = new Amount(meaning.overallDiameterMm(), "mm", 0);
        var sidewall = new Amount(meaning.sectionHeightMm(), "mm", 0);
        var width = new Amount(meaning.size().sectionWidthMm(), "mm", 0);
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "by-size",
                        "size",
                        meaning.size().toString(),
                        "height",
                        height,
                        "width",
                        width,
                        "sidewall",
                        sidewall,
                        "rim",
                        rimWidth));
        double top = GROUND_Y - HIGHEST;
        double middle = GROUND_Y - HIGHEST / 2;
        double rim = meaning.rimDiameterMm() / 2 * perMm;
        svg.circle(SIDE_X, middle, HIGHEST / 2, Palette.SHADE, Palette.SLATE, 2, "");
        svg.circle(SIDE_X, middle, rim, Palette.PAPER, Palette.SLATE, 2, "");
        svg.line(10, GROUND_Y, WIDTH - 10.0, GROUND_Y, Palette.INK, 2, "");
        dimension(svg, 28, top, GROUND_Y);
        svg.words(8, 22, 14, Anchor.START, Palette.OCHRE, true, reader.say(height));
        svg.words(
                SIDE_X,
                middle - 2,
                14,
                Anchor.MIDDLE,
                Palette.INK,
                true,
                labels.of("rim", "code", meaning.size().rimDiameterCode()));
        svg.words(
                SIDE_X,
                middle + 17,
                13,
                Anchor.MIDDLE,
                Palette.INK,
                false,
                reader.say(new Amount(meaning.rimDiameterMm(), "mm", 0)));
        section(svg, top, 1);
        section(svg, GROUND_Y, -1);
        double edge = SECTION_X + meaning.size().sectionWidthMm() * perMm / 2;
        dimension(svg, edge + 12, top, top + meaning.sectionHeightMm() * perMm);
        svg.words(WIDTH - 6.0, 22, 14, Anchor.END, Palette.OCHRE, true, labels.of("sidewall", "height", sidewall));
        svg.words(SECTION_X, GROUND_Y + 22, 14, Anchor.MIDDLE, Palette.OCHRE, true, labels.of("wide", "width", width));
        svg.words(
                SIDE_X,
                GROUND_Y + 22,
                14,
                Anchor.MIDDLE,
                Palette.INK,
                false,
                labels.of("a-turn", "way", new Amount(meaning.rollingCircumferenceMm(), "mm", 0)));
        svg.words(
                SECTION_X, middle + 5, 13, Anchor.MIDDLE, Palette.INK, false, labels.of("rim-wide", "width", rimWidth));
        svg.words(
                WIDTH / 2.0,
                HEIGHT - 8.0,
                14,
                Anchor.MIDDLE,
                Palette.INK,
                true,
                meaning.size().toString());
        return svg.close();
    }

    /** One cut of the tyre: {@code down} is 1 for the upper, −1 for the lower, from the tread to the rim. */
    private void section(Svg svg, double treadY, int down) {
        double half = meaning.size().sectionWidthMm() * perMm / 2;
        double tread = half * 0.86;
        double rim = rimCode * INCH_MM * perMm / 2;
        double belly = treadY + down * meaning.sectionHeightMm() * perMm * 0.5;
        double bead = treadY + down * meaning.sectionHeightMm() * perMm;
        svg.path(
                String.format(
                        Locale.ROOT,
                        "M%.1f %.1f C%.1f %.1f %.1f %.1f %.1f %.1f L%.1f %.1f C%.1f %.1f %.1f %.1f %.1f %.1f L%.1f %.1f C%.1f %.1f %.1f %.1f %.1f %.1f C%.1f %.1f %.1f %.1f %.1f %.1f",
                        SECTION_X - rim,
                        bead,
                        SECTION_X - rim,
                        bead,
                        SECTION_X - half,
                        bead - down * CORNER,
                        SECTION_X - half,
                        belly,
                        SECTION_X - half,
                        belly,
                        SECTION_X - half,
                        treadY + down * CORNER / 2,
                        SECTION_X - tread,
                        treadY,
                        SECTION_X - tread + 4,
                        treadY,
                        SECTION_X + tread - 4,
                        treadY,
                        SECTION_X + tread,
                        treadY,
                        SECTION_X + half,
                        treadY + down * CORNER / 2,
                        SECTION_X + half,
                        belly,
                        SECTION_X + half,
                        bead - down * CORNER,
                        SECTION_X + rim,
                        bead,
                        SECTION_X + rim,
                        bead),
                Palette.SHADE,
                Palette.SLATE,
                2);
        svg.line(SECTION_X - rim, bead, SECTION_X + rim, bead, Palette.SLATE, 3, "");
        svg.line(SECTION_X - rim, bead - down * 5, SECTION_X - rim, bead + down * 4, Palette.SLATE, 3, "");
        svg.line(SECTION_X + rim, bead - down * 5, SECTION_X + rim, bead + down * 4, Palette.SLATE, 3, "");
    }

    private static void dimension(Svg svg, double x, double fromY, double toY) {
        svg.line(x, fromY, x, toY, Palette.OCHRE, 1.5, "");
        svg.line(x - 6, fromY, x + 6, fromY, Palette.OCHRE, 1.5, "");
        svg.line(x - 6, toY, x + 6, toY, Palette.OCHRE, 1.5, "");
    }
}
