package cornerbook.core.brake.seizing;

import java.util.List;

/**
 * The hazard of seizing as the pads of many cars have it, beside the priors.
 *
 * @param cars that had a pad whose time is known
 * @param padTimes from one service of a pad's guides on, ended or not
 */
public record LearnedSeizing(WeibullFit fit, int cars, int padTimes) {
    /** What each coefficient of the fit stands for, in its order. */
    public static final List<String> COEFFICIENTS = List.of(
            "logarithm of the months by which 63 % have seized",
            "salt, none to all year", "garage", "each 10,000 km a year more", "friction braking, none to all");

    /** The hazard itself. */
    public SeizingHazard hazard() {
        return SeizingHazard.of(fit);
    }
}
