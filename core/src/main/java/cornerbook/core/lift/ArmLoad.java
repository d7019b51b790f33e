package cornerbook.core.lift;

/**
 * What one arm carries.
 *
 * @param loadKg when all four pads bear evenly
 * @param mostKg when they do not
 * @param shareOfRating of {@code mostKg}
 */
public record ArmLoad(double loadKg, double mostKg, double shareOfRating) {}
