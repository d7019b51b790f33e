package cornerbook.core.brake.seizing;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** What a coefficient of the fit of seizing stands for. */
public interface SeizingCoefficient extends Said {
    record LogarithmOfMonths() implements SeizingCoefficient {}

    record Salt() implements SeizingCoefficient {}

    record Garage() implements SeizingCoefficient {}

    record DistanceMore(Amount perYear) implements SeizingCoefficient {}

    record FrictionBraking() implements SeizingCoefficient {}
}
