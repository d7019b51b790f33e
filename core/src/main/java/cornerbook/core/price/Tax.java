package cornerbook.core.price;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.math.BigDecimal;

/**
 * A tax on the price before taxes.
 *
 * @param name {@link TaxCode}, or what a shop calls it
 * @param percent of the price, 0 to 50 with at most four decimals
 */
public record Tax(Said name, BigDecimal percent) {
    private static final int MOST_PERCENT = 50;
    private static final int MOST_DECIMALS = 4;

    public Tax {
        if (percent.signum() < 0
                || percent.compareTo(BigDecimal.valueOf(MOST_PERCENT)) > 0
                || percent.stripTrailingZeros().scale() > MOST_DECIMALS) {
            throw new Refused(new PriceSaid.NoRate(
                    percent.toPlainString(), new Between(0, MOST_PERCENT, "%", 0), new Amount(MOST_DECIMALS, "", 0)));
        }
    }
}
