package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;

/**
 * Where a pad touches the car.
 *
 * @param behindFrontAxleMm −1500 to 6000 mm
 * @param leftOfCentreMm −1500 to 1500 mm, to the right negative
 */
public record LiftPoint(double behindFrontAxleMm, double leftOfCentreMm) {
    public LiftPoint {
        check(LiftSaid.Part.POINT_BEHIND_FRONT_AXLE, behindFrontAxleMm, -1500, 6000, "mm");
        check(LiftSaid.Part.POINT_LEFT_OF_CENTRE, leftOfCentreMm, -1500, 1500, "mm");
    }
}
