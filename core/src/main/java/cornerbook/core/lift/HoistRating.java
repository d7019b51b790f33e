package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;
import static cornerbook.core.quantity.Range.checkKnown;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import org.jspecify.annotations.Nullable;

/**
 * What the plates of a two-post hoist say that it may carry. An arm whose plate nobody read is taken as a quarter of the
 * hoist's rating, which is for a load spread evenly over four arms (a hoist seller's page; arms differ, so the plate outranks it).
 *
 * @param hoistKg of the hoist, 500 to 12000 kg
 * @param frontArmKg of one front arm, 200 to 5000 kg; null where it was not read
 * @param rearArmKg of one rear arm, the same
 */
public record HoistRating(
        double hoistKg,
        @Nullable Double frontArmKg,
        @Nullable Double rearArmKg) {
    private static final int ARMS = 4;

    public HoistRating {
        checkKnown(LiftSaid.Part.ARM_RATING, frontArmKg, 200, 5000, "kg");
        checkKnown(LiftSaid.Part.ARM_RATING, rearArmKg, 200, 5000, "kg");
        check(LiftSaid.Part.HOIST_RATING, hoistKg, 500, 12000, "kg");
    }

    /** Of the arm at a corner. */
    public double armKg(Corner corner) {
        var armKg = corner.axle() == Axle.FRONT ? frontArmKg : rearArmKg;
        return armKg == null ? hoistKg / ARMS : armKg;
    }

    /** The least that an arm's plate says; null where not all were read. */
    public @Nullable Double weakestArmKg() {
        return frontArmKg == null || rearArmKg == null ? null : Double.valueOf(Math.min(frontArmKg, rearArmKg));
    }

    /** Whether the plates of all arms were read. */
    public boolean armsRead() {
        return frontArmKg != null && rearArmKg != null;
    }
}
