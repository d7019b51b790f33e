package cornerbook.app.picture;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Side;
import java.util.Map;
import java.util.stream.Collectors;

/** The car from above with an arrow for each wheel that moves, from the corner it leaves to the corner it goes to. */
public final class WheelMoves {
    private static final double LEFT_X = 176;
    private static final double RIGHT_X = 264;
    private static final double FRONT_Y = 92;
    private static final double REAR_Y = 252;
    /** Beside the straight line, so that two wheels that change places have an arrow each. */
    private static final double BESIDE = 9;

    private static final double HEAD = 15;
    private static final int SMALL_WIDTH = 132;
    private static final int SMALL_HEIGHT = 196;

    private WheelMoves() {}

    /**
     * The car with a label at each corner.
     *
     * @param moves where each wheel that moves goes, by the corner that it leaves
     */
    public static String svg(Map<Corner, CornerLabel> labels, Map<Corner, Corner> moves) {
        var svg = new Svg(CarFromAbove.WIDTH, CarFromAbove.HEIGHT, description(moves));
        CarFromAbove.draw(svg, labels);
        drawArrows(svg, moves, 0, 0, 1);
        return svg.close();
    }

    /** A small car with the arrows alone; its words stand beside it. */
    public static String small(Map<Corner, Corner> moves) {
        var svg = new Svg(SMALL_WIDTH, SMALL_HEIGHT, description(moves));
        svg.rectangle(30, 6, 72, 184, 26, Palette.SHADE, Palette.SLATE);
        svg.path("M60 26L66 19L72 26", "none", Palette.SLATE, 2);
        for (var corner : Corner.values()) {
            double x = corner.side() == Side.LEFT ? 22 : 98;
            double y = corner.axle() == Axle.FRONT ? 34 : 128;
            svg.rectangle(x, y, 12, 34, 4, Palette.SLATE, Palette.SLATE);
            svg.words(
                    corner.side() == Side.LEFT ? 18 : 114,
                    y + 22,
                    13,
                    corner.side() == Side.LEFT ? Svg.Anchor.END : Svg.Anchor.START,
                    Palette.INK,
                    true,
                    corner.name());
        }
        double scale = 94 / (REAR_Y - FRONT_Y);
        drawArrows(svg, moves, 66 - 220 * scale, 51 - FRONT_Y * scale, scale);
        return svg.close();
    }

    private static String description(Map<Corner, Corner> moves) {
        return moves.isEmpty()
                ? "Car from above, front up: no wheel moves"
                : moves.entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(move -> move.getKey() + " to " + move.getValue())
                        .collect(Collectors.joining(", ", "Car from above, front up: wheels move ", ""));
    }

    private static void drawArrows(Svg svg, Map<Corner, Corner> moves, double left, double top, double scale) {
        moves.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(move -> {
            double fromX = left + scale * x(move.getKey());
            double fromY = top + scale * y(move.getKey());
            double lengthX = left + scale * x(move.getValue()) - fromX;
            double lengthY = top + scale * y(move.getValue()) - fromY;
            double length = Math.hypot(lengthX, lengthY);
            drawArrow(svg, fromX, fromY, lengthX / length, lengthY / length, length, Math.max(scale, 0.7));
        });
    }

    /** A paper edge keeps crossing arrows apart. */
    private static void drawArrow(
            Svg svg, double x, double y, double alongX, double alongY, double length, double size) {
        double startX = x - alongY * BESIDE * size;
        double startY = y + alongX * BESIDE * size;
        double neckX = startX + alongX * (length - HEAD * size);
        double neckY = startY + alongY * (length - HEAD * size);
        svg.line(startX, startY, neckX, neckY, Palette.PAPER, 9 * size, "");
        svg.line(startX, startY, neckX, neckY, Palette.OCHRE, 4.5 * size, "");
        double half = 8.5 * size;
        var head = "M%s %sL%s %sL%s %sZ"
                .formatted(
                        Svg.number(startX + alongX * length),
                        Svg.number(startY + alongY * length),
                        Svg.number(neckX - alongY * half),
                        Svg.number(neckY + alongX * half),
                        Svg.number(neckX + alongY * half),
                        Svg.number(neckY - alongX * half));
        svg.path(head, Palette.OCHRE, Palette.PAPER, 1.5);
    }

    private static double x(Corner corner) {
        return corner.side() == Side.LEFT ? LEFT_X : RIGHT_X;
    }

    private static double y(Corner corner) {
        return corner.axle() == Axle.FRONT ? FRONT_Y : REAR_Y;
    }
}
