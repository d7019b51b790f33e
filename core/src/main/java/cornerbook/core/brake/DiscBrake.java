package cornerbook.core.brake;

import cornerbook.core.quantity.Range;

/**
 * A disc with its caliper and pads, a part for each line of the vehicle manufacturer's data.
 *
 * @param padMinimumMm friction material left at which the pad is to be replaced
 * @param discMinimumMm minimum thickness of the disc (the wear limit, not the refinishing limit)
 */
public record DiscBrake(
        BrakeSpecification.Caliper caliper,
        double padNewMm,
        double padMinimumMm,
        double discNewMm,
        double discMinimumMm,
        double runoutLimitMm,
        double thicknessVariationLimitMm)
        implements FrictionBrake {
    public DiscBrake {
        Range.check(BrakePart.PAD_NEW, padNewMm, 1, 30, "mm");
        Range.check(BrakePart.PAD_MINIMUM, padMinimumMm, 0, padNewMm, "mm");
        Range.check(BrakePart.DISC_NEW, discNewMm, 3, 60, "mm");
        Range.check(BrakePart.DISC_MINIMUM, discMinimumMm, 1, discNewMm, "mm");
        Range.check(BrakePart.RUNOUT_LIMIT, runoutLimitMm, 0.005, 1, "mm");
        Range.check(BrakePart.THICKNESS_VARIATION_LIMIT, thicknessVariationLimitMm, 0.001, 1, "mm");
    }
}
