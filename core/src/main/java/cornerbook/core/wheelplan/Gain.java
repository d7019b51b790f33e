package cornerbook.core.wheelplan;

import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/**
 * How much farther the best plan runs than another way.
 *
 * @param over the other way: each wheel left where it ran, or a pattern of the trade
 * @param otherKm distance the other way, at the mean depths and rates
 * @param gainKm how much farther the best plan runs, at the mean depths and rates
 * @param interval where the gain lies in the scenarios; null when none were given
 */
public record Gain(
        Said over, double otherKm, double gainKm, @Nullable Interval interval) {
    /** The gain to tell people: the median of the scenarios, or that at the mean values where none were given. */
    public double likelyKm() {
        return interval == null ? gainKm : interval.medianKm();
    }

    /** Whether the gain may as well be none. */
    public boolean mayBeNone() {
        return interval == null ? Math.abs(gainKm) < 1 : interval.includesZero();
    }

    /**
     * The middle 90 % of the scenarios.
     *
     * @param lowKm 5 % gain less
     * @param medianKm half gain more; less than the gain at the mean values, which the plan was chosen by
     * @param highKm 5 % gain more
     * @param scenarios how many there were
     */
    public record Interval(double lowKm, double medianKm, double highKm, int scenarios) {
        /** Whether the gain may as well be none. */
        public boolean includesZero() {
            return lowKm <= 0 && highKm >= 0;
        }
    }
}
