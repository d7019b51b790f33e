package cornerbook.core.lift;

/**
 * What one arm carries.
 *
 * @param loadKg when all four pads bear evenly: by this it is judged
 * @param mostKg when one pad bears nothing: a caution
 * @param ratingKg what it may carry
 */
public record ArmLoad(double loadKg, double mostKg, double ratingKg) {
    /** Share of the rating with all pads bearing evenly. */
    public double share() {
        return loadKg / ratingKg;
    }

    /** Share of the rating with one pad bearing nothing. */
    public double mostShare() {
        return mostKg / ratingKg;
    }

    public boolean overloaded() {
        return above(share());
    }

    /** Whether a share passes its rating; at the rating, but for rounding, it does not. */
    public static boolean above(double share) {
        return share > 1 + 1e-9;
    }
}
