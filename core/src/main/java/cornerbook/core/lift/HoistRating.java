package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;

/**
 * What the plates of a two-post hoist say that it may carry.
 *
 * @param hoistKg of the hoist, 500 to 12000 kg
 * @param frontArmKg of one front arm, 200 to 5000 kg
 * @param rearArmKg of one rear arm, 200 to 5000 kg
 */
public record HoistRating(double hoistKg, double frontArmKg, double rearArmKg) {
    public HoistRating {
        check(LiftSaid.Part.ARM_RATING, frontArmKg, 200, 5000, "kg");
        check(LiftSaid.Part.ARM_RATING, rearArmKg, 200, 5000, "kg");
        check(LiftSaid.Part.HOIST_RATING, hoistKg, 500, 12000, "kg");
    }

    /** Of the arm at a corner. */
    public double armKg(Corner corner) {
        return corner.axle() == Axle.FRONT ? frontArmKg : rearArmKg;
    }
}
