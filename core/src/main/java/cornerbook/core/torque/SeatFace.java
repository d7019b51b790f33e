package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

/**
 * The face on which a nut or bolt turns: its mean diameter, and how much more it grips than a flat one. On a flat face the
 * normal force is the clamp load F; on a cone of included angle 2α it is F / sin α, on a ball of radius R at mean diameter
 * Dm it is F / √(1 − (Dm/2R)²); friction grows by the same factor (equilibrium of the seat).
 *
 * @param meanDiameterMm Dm, at the middle of the contact, 6 to 60 mm
 * @param grip 1 on a flat face, more on a cone or ball
 */
public record SeatFace(double meanDiameterMm, double grip) {
    private static final double USUAL_MEAN_SHARE = 1.3;

    public SeatFace {
        check(TorqueSaid.Part.MEAN_DIAMETER_OF_SEAT, meanDiameterMm, 6, 60, "mm");
        check(TorqueSaid.Part.GRIP_OF_SEAT, grip, 1, 4, "");
    }

    /** Mean diameter to take when the seat has not been measured: 1.3 d, as of a hexagon head on its hole. Common practice, no source. */
    public static double usualMeanDiameterMm(ScrewThread thread) {
        return USUAL_MEAN_SHARE * thread.diameterMm();
    }

    /** A flat face between the hole and the outer edge of the nut's or bolt's contact; Dm is their mean (VDI 2230). */
    public static SeatFace flat(double holeMm, double outerMm) {
        check(TorqueSaid.Part.OUTER_DIAMETER_OF_SEAT, outerMm, holeMm, 80, "mm");
        return new SeatFace((holeMm + outerMm) / 2, 1);
    }

    /**
     * A conical face.
     *
     * @param includedAngleDeg 2α, 40 to 120 degrees; wheel nuts have 60 degrees as a rule (common practice, no source)
     */
    public static SeatFace cone(double meanDiameterMm, double includedAngleDeg) {
        check(TorqueSaid.Part.INCLUDED_ANGLE, includedAngleDeg, 40, 120, "°");
        return new SeatFace(meanDiameterMm, 1 / Math.sin(Math.toRadians(includedAngleDeg / 2)));
    }

    /** A spherical face. */
    public static SeatFace ball(double meanDiameterMm, double radiusMm) {
        check(TorqueSaid.Part.RADIUS_OF_BALL, radiusMm, meanDiameterMm / 1.9, 40, "mm");
        double sine = meanDiameterMm / (2 * radiusMm);
        return new SeatFace(meanDiameterMm, 1 / Math.sqrt(1 - sine * sine));
    }
}
