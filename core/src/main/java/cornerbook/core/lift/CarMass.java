package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;

/**
 * The car as it stands on its wheels.
 *
 * @param frontKg load of the front axle, 50 to 6500 kg
 * @param rearKg load of the rear axle, 50 to 6500 kg
 * @param wheelbaseMm 1500 to 5500 mm
 * @param leftShare share of the load on the left wheels, 0.4 to 0.6
 * @param trackMm distance of the left and right wheels' middles, 1000 to 2200 mm
 */
public record CarMass(double frontKg, double rearKg, double wheelbaseMm, double leftShare, double trackMm) {
    /** Common practice, no source. */
    public static final double USUAL_WHEELBASE_MM = 2700;

    /** Common practice, no source. */
    public static final double USUAL_TRACK_MM = 1600;

    public CarMass {
        check(LiftSaid.Part.FRONT_AXLE_LOAD, frontKg, 50, 6500, "kg");
        check(LiftSaid.Part.REAR_AXLE_LOAD, rearKg, 50, 6500, "kg");
        check(LiftSaid.Part.WHEELBASE, wheelbaseMm, 1500, 5500, "mm");
        check(LiftSaid.Part.LEFT_SHARE, leftShare, 0.4, 0.6, "");
        check(LiftSaid.Part.TRACK, trackMm, 1000, 2200, "mm");
    }
}
