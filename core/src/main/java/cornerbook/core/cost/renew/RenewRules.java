package cornerbook.core.cost.renew;

import cornerbook.core.cost.renew.RenewSaid.Input;
import cornerbook.core.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * What the car and its tyres allow.
 *
 * @param acrossAxlesMm greatest difference of depth between the axles, as of an all-wheel-drive car, 0.1 to 25 mm; null when not
 *     limited
 * @param deeperAtRear whether the deeper pair belongs at the rear
 * @param oneSize whether front and rear may change places
 */
public record RenewRules(@Nullable Double acrossAxlesMm, boolean deeperAtRear, boolean oneSize) {
    public RenewRules {
        Range.checkKnown(Input.LIMIT, acrossAxlesMm, 0.1, 25, "mm");
    }
}
