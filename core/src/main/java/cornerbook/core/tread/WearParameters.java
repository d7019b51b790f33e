package cornerbook.core.tread;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.DriveLayout;

/**
 * The prior of the corner-rate model.
 *
 * @param readingSdMm standard deviation of one depth reading
 * @param newDepthSdMm how far a tyre's depth when new to the book may lie from its stated depth
 * @param frontRateMmPer1000Km mean wear rate of the front corners
 * @param rearRateMmPer1000Km mean wear rate of the rear corners
 * @param vehicleSpread relative standard deviation of the factor that all corners of a car share
 * @param cornerSpread relative standard deviation of each corner's own factor
 */
public record WearParameters(
        double readingSdMm,
        double newDepthSdMm,
        double frontRateMmPer1000Km,
        double rearRateMmPer1000Km,
        double vehicleSpread,
        double cornerSpread) {
    private static final double DRIVEN_RATE = 0.20;
    private static final double FREE_RATE = 0.14;

    public WearParameters {
        positive("reading s.d.", readingSdMm);
        positive("new depth s.d.", newDepthSdMm);
        positive("front rate", frontRateMmPer1000Km);
        positive("rear rate", rearRateMmPer1000Km);
        positive("vehicle spread", vehicleSpread);
        positive("corner spread", cornerSpread);
    }

    /** The prior until the book has learned better. Source: common practice, no source. */
    public static WearParameters defaults(DriveLayout drive) {
        return new WearParameters(
                0.15,
                0.30,
                drive.drives(Axle.FRONT) ? DRIVEN_RATE : FREE_RATE,
                drive.drives(Axle.REAR) ? DRIVEN_RATE : FREE_RATE,
                0.30,
                0.15);
    }

    double rate(Axle axle) {
        return axle == Axle.FRONT ? frontRateMmPer1000Km : rearRateMmPer1000Km;
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && value < 10)) {
            throw new IllegalArgumentException("%s is %s, expected above 0 and below 10".formatted(what, value));
        }
    }
}
