package cornerbook.core.brake.seizing;

import cornerbook.core.say.Amount;
import java.util.List;

/**
 * The hazard of seizing as the pads of many cars have it, beside the priors.
 *
 * @param cars that had a pad whose time is known
 * @param padTimes from one service of a pad's guides on, ended or not
 */
public record LearnedSeizing(WeibullFit fit, int cars, int padTimes) {
    /** What each coefficient of the fit stands for, in its order. */
    public static final List<SeizingCoefficient> COEFFICIENTS = List.of(
            new SeizingCoefficient.LogarithmOfMonths(),
            new SeizingCoefficient.Salt(),
            new SeizingCoefficient.Garage(),
            new SeizingCoefficient.DistanceMore(Amount.of(10_000, "km")),
            new SeizingCoefficient.FrictionBraking());

    /** The hazard itself. */
    public SeizingHazard hazard() {
        return SeizingHazard.of(fit);
    }
}
