package cornerbook.core.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.Money;

/** How far what is charged may go beyond what was agreed. */
public final class Beyond {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Beyond() {}

    /**
     * The most that may be charged: agreed × (1 + p / 100), never a part of a cent more.
     *
     * @param agreed with taxes, as the customer read it
     * @param percent by which the place lets a bill exceed its estimate, 0 or more
     */
    public static Money most(Money agreed, BigDecimal percent) {
        return agreed.multipliedBy(BigDecimal.ONE.add(percent.divide(HUNDRED)), RoundingMode.DOWN);
    }
}
