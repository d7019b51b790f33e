package cornerbook.core.lift;

import cornerbook.core.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * Heights of the car above the floor that it stands on; null for what is not known.
 *
 * @param groundClearanceMm least height over the way of a hoist's arm to its lift point, 50 to 1000 mm
 * @param liftPointMm the lift points, the lowest of them, 50 to 1000 mm
 * @param roofMm the roof with what stands on it, 1000 to 3500 mm
 */
public record CarHeights(
        @Nullable Double groundClearanceMm,
        @Nullable Double liftPointMm,
        @Nullable Double roofMm) {
    /** Nothing is known. */
    public static final CarHeights NOT_KNOWN = new CarHeights(null, null, null);

    public CarHeights {
        Range.checkKnown(LiftSaid.Part.GROUND_CLEARANCE, groundClearanceMm, 50, 1000, "mm");
        Range.checkKnown(LiftSaid.Part.LIFT_POINT_HEIGHT, liftPointMm, 50, 1000, "mm");
        Range.checkKnown(LiftSaid.Part.CAR_HEIGHT, roofMm, 1000, 3500, "mm");
    }
}
