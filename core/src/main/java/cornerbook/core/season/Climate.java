package cornerbook.core.season;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Refused;
import java.time.Month;
import java.util.List;

/**
 * The climate of a place, month by month, as weather services publish it: climatological normals, averages of a uniform
 * period of 30 years (WMO-No. 1203, Guidelines on the Calculation of Climate Normals). Temperatures of the air in °C.
 *
 * @param place as people call it
 * @param source where the normals come from, with their period; shown wherever they are used
 * @param coldestMorningC coldest morning to expect in a usual year: the mean of the years' lowest daily minima
 * @param months January first, all twelve
 */
public record Climate(String place, String source, double coldestMorningC, List<MonthNormal> months) {
    private static final double COLDEST_C = -60;
    private static final double WARMEST_C = 55;
    private static final int LONGEST_TEXT = 200;

    public Climate {
        months = List.copyOf(months);
        checkText(SeasonSaid.ClimateText.PLACE, place);
        checkText(SeasonSaid.ClimateText.SOURCE, source);
        if (months.size() != Month.values().length) {
            throw new Refused(new SeasonSaid.NotAllMonths(months.size()));
        }
        double leastC = months.stream()
                .mapToDouble(MonthNormal::meanDailyMinimumC)
                .min()
                .orElseThrow();
        check(SeasonSaid.ClimateNumber.COLDEST_MORNING, coldestMorningC, COLDEST_C, leastC, "°C");
    }

    /**
     * Normals of one month (WMO-No. 1203, principal climatological surface parameters).
     *
     * @param meanDailyMinimumC mean of the daily minima, −60 to 55 °C
     * @param meanDailyMaximumC mean of the daily maxima, not below it
     */
    public record MonthNormal(double meanDailyMinimumC, double meanDailyMaximumC) {
        public MonthNormal {
            check(SeasonSaid.ClimateNumber.MEAN_DAILY_MINIMUM, meanDailyMinimumC, COLDEST_C, WARMEST_C, "°C");
            check(SeasonSaid.ClimateNumber.MEAN_DAILY_MAXIMUM, meanDailyMaximumC, meanDailyMinimumC, WARMEST_C, "°C");
        }
    }

    /** Normals of a month. */
    public MonthNormal get(Month month) {
        return months.get(month.ordinal());
    }

    /** The place with the source, for beside a number. */
    public String citation() {
        return "%s (%s)".formatted(place, source);
    }

    private static void checkText(SeasonSaid.ClimateText which, String text) {
        if (text.isBlank() || text.length() > LONGEST_TEXT) {
            throw new Refused(new SeasonSaid.TextMissingOrLong(which, LONGEST_TEXT));
        }
    }
}
