package cornerbook.core.air;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.air.AirSaid.Input;
import cornerbook.core.season.Climate;
import java.time.Month;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Temperatures at which a tyre stands in one month.
 *
 * @param month null when only its temperature is known
 * @param mildC on a usual afternoon, −60 to 55 °C
 * @param coldC on a usual morning, not above it
 */
public record SeasonMonth(@Nullable Month month, double mildC, double coldC) {
    public SeasonMonth {
        check(Input.MONTH_MEAN, mildC, -60, 55, "°C");
        check(Input.MONTH_MORNING_MEAN, coldC, -60, mildC, "°C");
    }

    /** A month of which only the mean is known. */
    public static SeasonMonth ofMean(double meanC) {
        return new SeasonMonth(null, meanC, meanC);
    }

    /**
     * Months of a climate in their order: the afternoon at the mean daily maximum, the morning at the mean daily minimum.
     *
     * @param count 1 to 12
     */
    public static List<SeasonMonth> of(Climate climate, Month first, int count) {
        check(Input.MONTHS_AHEAD, count, 1, 12, "");
        return Stream.iterate(first, month -> month.plus(1))
                .limit(count)
                .map(month -> new SeasonMonth(
                        month,
                        climate.get(month).meanDailyMaximumC(),
                        climate.get(month).meanDailyMinimumC()))
                .toList();
    }

    boolean isSpread() {
        return coldC < mildC;
    }
}
