package cornerbook.core.brake.disc;

import cornerbook.core.quantity.Range;

/**
 * The vehicle manufacturer's limits of a disc. Two of them are easily mixed up: a disc may wear to one thickness, but may be
 * machined only to a greater one, because it has to wear on afterwards.
 *
 * @param minimumWearMm below it the disc is replaced
 * @param minimumRefinishMm below it no machining may end
 * @param variationLimitMm thickness variation, 0.010 to 0.030 mm in makers' manuals
 */
public record DiscLimits(double minimumWearMm, double minimumRefinishMm, double variationLimitMm) {
    public DiscLimits {
        Range.check("minimum wear thickness", minimumWearMm, 1, 60, "mm");
        Range.check("minimum refinish thickness", minimumRefinishMm, minimumWearMm, 60, "mm");
        Range.check("thickness variation limit", variationLimitMm, 0.001, 1, "mm");
    }
}
