package cornerbook.core.price;

import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import java.math.RoundingMode;
import org.joda.money.Money;

/** Work by its time: minutes / 60 × rate, half a cent up. */
public final class Labour {
    private static final long MINUTES_IN_AN_HOUR = 60;
    private static final int MOST_MINUTES = 6000;

    private Labour() {}

    /**
     * What it costs.
     *
     * @param minutes 0 to 6000
     * @param hourly the shop's rate for an hour
     */
    public static Money of(int minutes, Money hourly) {
        if (minutes < 0 || minutes > MOST_MINUTES) {
            throw new Refused(new PriceSaid.NoMinutes(minutes, new Between(0, MOST_MINUTES, "min", 0)));
        }
        return hourly.multipliedBy(minutes).dividedBy(MINUTES_IN_AN_HOUR, RoundingMode.HALF_UP);
    }
}
