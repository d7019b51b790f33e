package cornerbook.app.picture.brake;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.brake.judge.BrakeMeasured;
import cornerbook.core.brake.judge.BrakeMeasured.Pad;
import cornerbook.core.corner.Side;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The pads of one corner and the disc between them, to scale, seen from above with the leading edge at the top: backing plate,
 * friction material that is left, where it was at the visit before, where it ends when new, and the limit. On a left wheel the
 * outer pad lies left, on a right wheel right.
 */
public final class BrakePads {
    private static final int WIDTH = 220;
    private static final int HEIGHT = 150;
    private static final int HEIGHT_WITH_NOTE = 168;
    static final String ROOM = "app/picture/brake";
    private static final double MIDDLE_X = 110;
    private static final double DISC_HALF_WIDTH = 8;
    private static final double PLATE_WIDTH = 9;
    private static final double FRICTION_WIDTH = 66;
    private static final double TOP_Y = 24;
    private static final double BOTTOM_Y = 102;

    private final BrakeMeasured measured;
    private final double newMm;
    private final Svg svg;
    private final Reader reader;
    private final Labels labels;

    private BrakePads(BrakeMeasured measured, Reader reader) {
        this.reader = reader;
        this.labels = reader.labels(ROOM);
        this.measured = measured;
        this.newMm = measured.brake().padNewMm();
        this.svg = new Svg(WIDTH, measured.padsReplaced() ? HEIGHT_WITH_NOTE : HEIGHT, description());
    }

    /** Draws them; a pad that was not read is left out. */
    public static String svg(BrakeMeasured measured, Reader reader) {
        return new BrakePads(measured, reader).draw();
    }

    private String draw() {
        svg.rectangle(
                MIDDLE_X - DISC_HALF_WIDTH,
                TOP_Y - 10,
                2 * DISC_HALF_WIDTH,
                BOTTOM_Y - TOP_Y + 20,
                2,
                Palette.SHADE,
                Palette.SLATE);
        for (var pad : measured.pads()) {
            boolean left = (pad.side() == Spot.OUTER) == (measured.corner().side() == Side.LEFT);
            pad(pad, left ? -1 : 1);
        }
        svg.words(
                4,
                12,
                12,
                Anchor.START,
                Palette.PLUM,
                false,
                labels.of("limit", "limit", mm(measured.brake().padMinimumMm())));
        svg.words(WIDTH - 4.0, 12, 12, Anchor.END, Palette.SLATE, false, labels.of("new", "thickness", mm(newMm)));
        if (measured.pads().isEmpty()) {
            svg.words(MIDDLE_X, 127, 13, Anchor.MIDDLE, Palette.INK, false, labels.of("pads-not-read"));
        }
        if (measured.padsReplaced()) {
            svg.words(MIDDLE_X, 162, 12, Anchor.MIDDLE, Palette.INK, true, labels.of("found-replaced"));
        }
        return svg.close();
    }

    /** @param direction −1 to the left of the disc, 1 to the right */
    private void pad(Pad pad, int direction) {
        double plateX = MIDDLE_X + direction * (DISC_HALF_WIDTH + FRICTION_WIDTH);
        svg.path(
                "M%s %sL%s %sL%s %sL%s %sZ"
                        .formatted(
                                n(plateX),
                                n(TOP_Y),
                                n(face(plateX, direction, pad.leadingMm())),
                                n(TOP_Y),
                                n(face(plateX, direction, pad.trailingMm())),
                                n(BOTTOM_Y),
                                n(plateX),
                                n(BOTTOM_Y)),
                Palette.BAND,
                Palette.OCHRE,
                1.5);
        svg.rectangle(
                direction < 0 ? plateX - PLATE_WIDTH : plateX,
                TOP_Y - 4,
                PLATE_WIDTH,
                BOTTOM_Y - TOP_Y + 8,
                2,
                Palette.SLATE,
                Palette.SLATE);
        double limitX = face(plateX, direction, measured.brake().padMinimumMm());
        svg.line(limitX, TOP_Y - 6, limitX, BOTTOM_Y + 6, Palette.PLUM, 2, "7 3");
        if (pad.beforeMm() != null) {
            double beforeX = face(plateX, direction, pad.beforeMm());
            svg.line(beforeX, TOP_Y, beforeX, BOTTOM_Y, Palette.SLATE, 1.2, "2 3");
        }
        double wordsX = MIDDLE_X + direction * 52;
        boolean thin = pad.thinnestMm() < measured.brake().padMinimumMm();
        svg.words(wordsX, 127, 15, Anchor.MIDDLE, thin ? Palette.PLUM : Palette.INK, true, thickness(pad));
        svg.words(wordsX, 144, 12, Anchor.MIDDLE, Palette.INK, false, reader.say(pad.side()));
    }

    /** Where the friction material ends towards the disc. */
    private double face(double plateX, int direction, double thicknessMm) {
        return plateX - direction * FRICTION_WIDTH * Math.min(thicknessMm / newMm, 1.05);
    }

    /** Of a wedge the leading edge first. */
    private String thickness(Pad pad) {
        var leading = reader.number(mm(pad.leadingMm()));
        return pad.leadingMm() == pad.trailingMm() ? leading : leading + "/" + reader.number(mm(pad.trailingMm()));
    }

    private String description() {
        return measured.padsReplaced() ? found() + "; " + labels.of("found-replaced") : found();
    }

    private String found() {
        return labels.of(
                "pads",
                "corner",
                measured.corner(),
                "pads",
                measured.pads().stream().map(this::description).collect(Collectors.joining("; ")),
                "limit",
                mm(measured.brake().padMinimumMm()),
                "thickness",
                mm(newMm));
    }

    private String description(Pad pad) {
        var beforeMm = pad.beforeMm();
        var edges = pad.leadingMm() == pad.trailingMm()
                ? List.of(pad.leadingMm())
                : List.of(pad.leadingMm(), pad.trailingMm());
        var thickness = edges.stream().map(edge -> reader.say(mm(edge))).collect(Collectors.joining("/"));
        return beforeMm == null
                ? labels.of("pad", "side", pad.side(), "thickness", thickness)
                : labels.of("pad-before", "side", pad.side(), "thickness", thickness, "before", mm(beforeMm));
    }

    private static Amount mm(double thicknessMm) {
        return new Amount(thicknessMm, "mm", 1);
    }

    private static String n(double value) {
        return Svg.number(value);
    }
}
