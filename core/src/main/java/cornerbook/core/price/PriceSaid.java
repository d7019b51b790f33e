package cornerbook.core.price;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;

/** What cannot be a price, a rate or a time. */
sealed interface PriceSaid extends Said {
    record NoRate(String percent, Between allowed, Amount decimals) implements PriceSaid {}

    record NoMinutes(int minutes, Between allowed) implements PriceSaid {}
}
