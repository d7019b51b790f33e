package cornerbook.app.picture.car;

import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.app.picture.VerdictMark;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Side;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The car from above with its four corners; front is up, LF is top left. */
public final class CarFromAbove {
    static final int WIDTH = 440;
    static final int HEIGHT = 340;
    /** Of the smallest letters: where the picture is small, as on a sheet, they are read without glasses. */
    private static final int DETAIL_SIZE = 16;

    /** Letters that fit between the wheel and the edge. */
    private static final int LONGEST_DETAIL = 14;

    static final String ROOM = "app/picture/car";

    private CarFromAbove() {}

    /** A corner without a label keeps its wheel and its name. */
    public static String svg(Map<Corner, CornerLabel> labels, Reader reader) {
        var corners = labels.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> Stream.of(
                                reader.say(entry.getKey()),
                                entry.getValue().caption(),
                                entry.getValue().heading(),
                                entry.getValue().detail())
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining(", "));
        var svg = new Svg(WIDTH, HEIGHT, reader.labels(ROOM).of("car", "corners", corners));
        draw(svg, labels, reader);
        return svg.close();
    }

    static void draw(Svg svg, Map<Corner, CornerLabel> labels, Reader reader) {
        drawBody(svg, reader);
        for (var corner : Corner.values()) {
            drawCorner(svg, corner, labels.get(corner), reader);
        }
    }

    private static void drawBody(Svg svg, Reader reader) {
        svg.path(
                "M162 70C162 34 182 16 220 14C258 16 278 34 278 70L282 250C283 296 270 318 220 322C170 318 157 296 158 250Z",
                Palette.SHADE,
                Palette.SLATE,
                2);
        // Windscreen, roof, rear window.
        svg.path(
                "M173 122C190 104 250 104 267 122L257 152C240 144 200 144 183 152Z", Palette.PAPER, Palette.SLATE, 1.5);
        svg.path(
                "M183 160C200 153 240 153 257 160L257 240C240 246 200 246 183 240Z",
                Palette.PAPER,
                Palette.HAIRLINE,
                1);
        svg.path(
                "M183 249C200 254 240 254 257 249L266 278C250 290 190 290 174 278Z", Palette.PAPER, Palette.SLATE, 1.5);
        svg.path("M212 40L220 30L228 40", "none", Palette.SLATE, 2);
        svg.words(220, 60, DETAIL_SIZE, Anchor.MIDDLE, Palette.SLATE, false, reader.say(Axle.FRONT));
    }

    /** What is too long for the space beside the car goes on below, parted at a blank. */
    private static List<String> parted(String detail) {
        var lines = new ArrayList<String>();
        for (var word : detail.split(" ", -1)) {
            if (!lines.isEmpty() && lines.getLast().length() + 1 + word.length() <= LONGEST_DETAIL) {
                lines.addLast(lines.removeLast() + " " + word);
            } else {
                lines.add(word);
            }
        }
        return lines;
    }

    private static void drawCorner(Svg svg, Corner corner, @Nullable CornerLabel label, Reader reader) {
        boolean left = corner.side() == Side.LEFT;
        double middleY = corner.axle() == Axle.FRONT ? 92 : 240;
        double wheelX = left ? 143 : 275;
        svg.rectangle(wheelX, middleY - 30, 22, 60, 6, Palette.SLATE, Palette.SLATE);
        for (double groove : new double[] {5.5, 11, 16.5}) {
            svg.line(wheelX + groove, middleY - 26, wheelX + groove, middleY + 26, Palette.SHADE, 1.2, "");
        }
        double edgeX = left ? 130 : 310;
        var anchor = left ? Anchor.END : Anchor.START;
        if (label == null) {
            svg.words(edgeX, middleY + 5, 15, anchor, Palette.INK, true, reader.say(corner));
            return;
        }
        double nameX = edgeX;
        if (label.verdict() != null) {
            double markX = left ? edgeX - 17 : edgeX + 17;
            VerdictMark.draw(svg, label.verdict(), label.lifeLeft(), markX, middleY - 24, 17);
            nameX = left ? edgeX - 42 : edgeX + 42;
        }
        svg.words(nameX, middleY - 18, 17, anchor, Palette.SLATE, true, reader.say(corner));
        if (!label.caption().isEmpty()) {
            svg.words(edgeX, middleY + 4, DETAIL_SIZE, anchor, Palette.INK, false, label.caption());
        }
        svg.words(edgeX, middleY + 22, 20, anchor, Palette.INK, true, label.heading());
        double lineY = middleY + 40;
        for (var line :
                label.lines().stream().flatMap(words -> parted(words).stream()).toList()) {
            svg.words(edgeX, lineY, DETAIL_SIZE, anchor, Palette.INK, false, line);
            lineY += DETAIL_SIZE + 2;
        }
    }
}
