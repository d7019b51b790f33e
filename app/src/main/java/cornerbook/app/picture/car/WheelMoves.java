package cornerbook.app.picture.car;

import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Side;
import cornerbook.words.Reader;
import java.util.Map;
import java.util.stream.Collectors;

/** The car from above with an arrow for each wheel that moves, from the corner it leaves to the corner it goes to. */
public final class WheelMoves {
    private static final double LEFT_X = 176;
    private static final double RIGHT_X = 264;
    private static final double FRONT_Y = 92;
    private static final double REAR_Y = 240;
    /** Beside the straight line, so that two wheels that change places have an arrow each. */
    private static final double BESIDE = 9;

    private static final double HEAD = 15;
    private static final double OFF = 27;
    private static final double LEAST_SIZE = 0.7;
    private static final int SMALL_WIDTH = 152;
    private static final int SMALL_HEIGHT = 196;

    private WheelMoves() {}

    /**
     * The car with a label at each corner.
     *
     * @param moves where each wheel that moves goes, by the corner that it leaves
     */
    public static String svg(Map<Corner, CornerLabel> labels, Map<Corner, Corner> moves, Reader reader) {
        var svg = new Svg(CarFromAbove.WIDTH, CarFromAbove.HEIGHT, description(moves, reader));
        CarFromAbove.draw(svg, labels, reader);
        drawArrows(svg, moves, 0, 0, 1);
        return svg.close();
    }

    /** A small car with the arrows alone; its words stand beside it. */
    public static String small(Map<Corner, Corner> moves, Reader reader) {
        var svg = new Svg(SMALL_WIDTH, SMALL_HEIGHT, description(moves, reader));
        svg.rectangle(40, 6, 72, 184, 26, Palette.SHADE, Palette.SLATE);
        svg.path("M70 26L76 19L82 26", "none", Palette.SLATE, 2);
        for (var corner : Corner.values()) {
            double x = corner.side() == Side.LEFT ? 32 : 108;
            double y = corner.axle() == Axle.FRONT ? 34 : 128;
            svg.rectangle(x, y, 12, 34, 4, Palette.SLATE, Palette.SLATE);
            svg.words(
                    corner.side() == Side.LEFT ? 28 : 124,
                    y + 22,
                    13,
                    corner.side() == Side.LEFT ? Svg.Anchor.END : Svg.Anchor.START,
                    Palette.INK,
                    true,
                    reader.say(corner));
        }
        double scale = 94 / (REAR_Y - FRONT_Y);
        drawArrows(svg, moves, 76 - 220 * scale, 51 - FRONT_Y * scale, scale);
        return svg.close();
    }

    private static String description(Map<Corner, Corner> moves, Reader reader) {
        var labels = reader.labels(CarFromAbove.ROOM);
        return moves.isEmpty()
                ? labels.of("no-moves")
                : labels.of(
                        "moves",
                        "moves",
                        moves.entrySet().stream()
                                .sorted(Map.Entry.comparingByKey())
                                .map(move -> labels.of("move", "from", move.getKey(), "to", move.getValue()))
                                .collect(Collectors.joining(", ")));
    }

    /** Heads over lines, and each line begins off its corner, so that the head of the wheel that comes there stays free. */
    private static void drawArrows(Svg svg, Map<Corner, Corner> moves, double left, double top, double scale) {
        double size = Math.max(scale, LEAST_SIZE);
        var arrows = moves.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(move -> arrow(move.getKey(), move.getValue(), left, top, scale, size))
                .toList();
        arrows.forEach(arrow -> drawLine(svg, arrow, size));
        arrows.forEach(arrow -> drawHead(svg, arrow, size));
    }

    /** A line of a length from a start in a direction of length 1. */
    private record Arrow(double startX, double startY, double alongX, double alongY, double length) {
        double x(double along, double beside) {
            return startX + along * alongX - beside * alongY;
        }

        double y(double along, double beside) {
            return startY + along * alongY + beside * alongX;
        }
    }

    private static Arrow arrow(Corner from, Corner to, double left, double top, double scale, double size) {
        double lengthX = scale * (x(to) - x(from));
        double lengthY = scale * (y(to) - y(from));
        double length = Math.hypot(lengthX, lengthY);
        var whole =
                new Arrow(left + scale * x(from), top + scale * y(from), lengthX / length, lengthY / length, length);
        return new Arrow(
                whole.x(OFF * size, BESIDE * size),
                whole.y(OFF * size, BESIDE * size),
                whole.alongX,
                whole.alongY,
                length - OFF * size);
    }

    /** A paper edge keeps crossing arrows apart. */
    private static void drawLine(Svg svg, Arrow arrow, double size) {
        double neck = arrow.length - HEAD * size;
        svg.line(arrow.startX, arrow.startY, arrow.x(neck, 0), arrow.y(neck, 0), Palette.PAPER, 9 * size, "");
        svg.line(arrow.startX, arrow.startY, arrow.x(neck, 0), arrow.y(neck, 0), Palette.OCHRE, 4.5 * size, "");
    }

    private static void drawHead(Svg svg, Arrow arrow, double size) {
        double neck = arrow.length - HEAD * size;
        double half = 8.5 * size;
        var head = "M%s %sL%s %sL%s %sZ"
                .formatted(
                        Svg.number(arrow.x(arrow.length, 0)),
                        Svg.number(arrow.y(arrow.length, 0)),
                        Svg.number(arrow.x(neck, half)),
                        Svg.number(arrow.y(neck, half)),
                        Svg.number(arrow.x(neck, -half)),
                        Svg.number(arrow.y(neck, -half)));
        svg.path(head, Palette.OCHRE, Palette.PAPER, 1.5);
    }

    private static double x(Corner corner) {
        return corner.side() == Side.LEFT ? LEFT_X : RIGHT_X;
    }

    private static double y(Corner corner) {
        return corner.axle() == Axle.FRONT ? FRONT_Y : REAR_Y;
    }
}
