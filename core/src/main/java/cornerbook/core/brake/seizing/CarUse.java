package cornerbook.core.brake.seizing;

import cornerbook.core.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * How the car is used, as far as it bears on brakes that seize; null for what is usual
 * ({@link SeizingExposure#usual(double, boolean)}).
 *
 * @param saltShare share of the year on salted roads, 0 to 1
 * @param garaged whether the car stands inside at night
 * @param frictionBrakeShare share of the braking energy that goes through the pads, 0 to 1
 */
public record CarUse(
        @Nullable Double saltShare,
        @Nullable Boolean garaged,
        @Nullable Double frictionBrakeShare) {
    /** As usual. */
    public static final CarUse USUAL = new CarUse(null, null, null);

    public CarUse {
        Range.checkKnown(UsePart.SALT_SHARE, saltShare, 0, 1, "");
        Range.checkKnown(UsePart.FRICTION_BRAKE_SHARE, frictionBrakeShare, 0, 1, "");
    }

    /** What the pads are exposed to. */
    public SeizingExposure exposure(double distanceKmPerYear, boolean regenerates) {
        var usual = SeizingExposure.usual(distanceKmPerYear, regenerates);
        return new SeizingExposure(
                saltShare != null ? saltShare : usual.saltShare(),
                garaged != null ? garaged : usual.garaged(),
                distanceKmPerYear,
                frictionBrakeShare != null ? frictionBrakeShare : usual.frictionBrakeShare());
    }
}
