package cornerbook.app.book.price;

import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What is taken for it. Nothing at all says that the shop has it no longer.
 *
 * @param minutes of a job, 0 to 6000; null where it takes none of its own
 * @param amount an hour, one tyre, one part, or the parts of a job; null where nothing is charged for them
 * @param newTreadMm of a tyre, 4 to 25 mm; null where it is not known
 */
public record PriceValue(
        @Nullable Integer minutes,
        @Nullable Money amount,
        @Nullable Double newTreadMm) {
    public static final PriceValue GONE = new PriceValue(null, null, null);

    static final int MOST_MINUTES = 6000;

    /** Of one thing, in money. */
    public static PriceValue of(Money amount) {
        return new PriceValue(null, amount, null);
    }

    public boolean isGone() {
        return minutes == null && amount == null;
    }
}
