package cornerbook.core.lift;

import cornerbook.core.corner.Corner;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The four lift points.
 *
 * @param lf left of {@code rf} and ahead of {@code lr}
 * @param rr right of {@code lr} and behind {@code rf}
 */
public record LiftPoints(LiftPoint lf, LiftPoint rf, LiftPoint lr, LiftPoint rr) {
    /** The points around the car, counter-clockwise seen from above with the front up. */
    private static final List<Corner> AROUND = List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF);

    public LiftPoints {
        before("LF", lf, "LR", lr);
        before("RF", rf, "RR", rr);
        leftOf("LF", lf, "RF", rf);
        leftOf("LR", lr, "RR", rr);
    }

    /** Points that mirror each other left and right, {@code widthMm} apart. */
    public static LiftPoints symmetric(double frontMm, double rearMm, double widthMm) {
        return new LiftPoints(
                new LiftPoint(frontMm, widthMm / 2),
                new LiftPoint(frontMm, -widthMm / 2),
                new LiftPoint(rearMm, widthMm / 2),
                new LiftPoint(rearMm, -widthMm / 2));
    }

    /** The point of a corner. */
    public LiftPoint get(Corner corner) {
        return switch (corner) {
            case LF -> lf;
            case RF -> rf;
            case LR -> lr;
            case RR -> rr;
        };
    }

    /** How far a place lies inside the polygon of the points, mm; negative outside. */
    double marginMm(double behindFrontAxleMm, double leftOfCentreMm) {
        double margin = Double.POSITIVE_INFINITY;
        for (int i = 0; i < AROUND.size(); i++) {
            var from = get(AROUND.get(i));
            var to = get(AROUND.get((i + 1) % AROUND.size()));
            double alongX = to.behindFrontAxleMm() - from.behindFrontAxleMm();
            double alongY = to.leftOfCentreMm() - from.leftOfCentreMm();
            double cross = alongY * (behindFrontAxleMm - from.behindFrontAxleMm())
                    - alongX * (leftOfCentreMm - from.leftOfCentreMm());
            margin = Math.min(margin, cross / Math.hypot(alongX, alongY));
        }
        return margin;
    }

    /** The place on the line of the nearest side, square to it, of a place inside the polygon. */
    public LiftPoint nearestOnSide(double behindFrontAxleMm, double leftOfCentreMm) {
        return IntStream.range(0, AROUND.size())
                .mapToObj(i -> {
                    var from = get(AROUND.get(i));
                    var to = get(AROUND.get((i + 1) % AROUND.size()));
                    double alongX = to.behindFrontAxleMm() - from.behindFrontAxleMm();
                    double alongY = to.leftOfCentreMm() - from.leftOfCentreMm();
                    double share = ((behindFrontAxleMm - from.behindFrontAxleMm()) * alongX
                                    + (leftOfCentreMm - from.leftOfCentreMm()) * alongY)
                            / (alongX * alongX + alongY * alongY);
                    return new LiftPoint(
                            from.behindFrontAxleMm() + share * alongX, from.leftOfCentreMm() + share * alongY);
                })
                .min(Comparator.comparingDouble(foot -> Math.hypot(
                        foot.behindFrontAxleMm() - behindFrontAxleMm, foot.leftOfCentreMm() - leftOfCentreMm)))
                .orElseThrow();
    }

    private static void before(String frontName, LiftPoint front, String rearName, LiftPoint rear) {
        if (front.behindFrontAxleMm() >= rear.behindFrontAxleMm()) {
            throw new IllegalArgumentException(
                    "lift point %s is not ahead of %s, expected the front ones ahead".formatted(frontName, rearName));
        }
    }

    private static void leftOf(String leftName, LiftPoint left, String rightName, LiftPoint right) {
        if (left.leftOfCentreMm() <= right.leftOfCentreMm()) {
            throw new IllegalArgumentException("lift point %s is not left of %s, expected the left ones further left"
                    .formatted(leftName, rightName));
        }
    }
}
