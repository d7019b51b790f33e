package cornerbook.core.wheelplan;

import cornerbook.core.quantity.Range;
import cornerbook.core.wheelplan.PlanSaid.Input;
import org.jspecify.annotations.Nullable;

/**
 * What the vehicle manufacturer says on wheels of different depth; null where it says nothing or nobody has looked, and
 * the house rules then serve.
 *
 * @param allWheel how far the four wheels may differ, in the kind that the manual uses
 * @param sameAxleMm how far the two wheels of an axle may differ in depth, 0.1 to 10 mm
 * @param deeperPairAtRear whether the deeper pair belongs at the rear
 */
public record DifferenceLimits(
        @Nullable AllWheelLimit allWheel,
        @Nullable Double sameAxleMm,
        @Nullable Boolean deeperPairAtRear) {
    /** Nothing is known. */
    public static final DifferenceLimits NOT_KNOWN = new DifferenceLimits(null, null, null);

    public DifferenceLimits {
        Range.checkKnown(Input.SAME_AXLE_LIMIT, sameAxleMm, 0.1, 10, "mm");
        if (allWheel != null) {
            boolean depth = allWheel.kind() == AllWheelLimit.Kind.TREAD_DEPTH;
            Range.check(Input.ALL_WHEEL_LIMIT, allWheel.valueMm(), 0.1, depth ? 10 : 100, "mm");
        }
    }
}
