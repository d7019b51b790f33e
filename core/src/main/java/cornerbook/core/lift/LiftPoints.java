package cornerbook.core.lift;

import cornerbook.core.say.Refused;

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
        before(Corner.LF, lf, Corner.LR, lr);
        before(Corner.RF, rf, Corner.RR, rr);
        leftOf(Corner.LF, lf, Corner.RF, rf);
        leftOf(Corner.LR, lr, Corner.RR, rr);
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

    private static void before(Corner frontCorner, LiftPoint front, Corner rearCorner, LiftPoint rear) {
        if (front.behindFrontAxleMm() >= rear.behindFrontAxleMm()) {
            throw new Refused(new LiftSaid.NotAhead(frontCorner, rearCorner));
        }
    }

    private static void leftOf(Corner leftCorner, LiftPoint left, Corner rightCorner, LiftPoint right) {
        if (left.leftOfCentreMm() <= right.leftOfCentreMm()) {
            throw new Refused(new LiftSaid.NotLeft(leftCorner, rightCorner));
        }
    }
}
