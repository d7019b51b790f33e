package cornerbook.core.changeover;

import cornerbook.core.changeover.ChangeOverSaid.Input;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Refused;
import cornerbook.core.season.Climate;
import java.time.LocalDate;
import java.util.List;

/**
 * The normal temperature of each day of the year from the normals of the months: the harmonics of the year whose means over the
 * twelve months are those normals. A month flattens the j-th harmonic by sin(πj/12)/(πj/12), so that its amplitude among the
 * months is divided by that. Each month is a twelfth of the wave, however many days it has.
 *
 * <p>Source: Epstein 1991, On obtaining daily climatological values from monthly means, Journal of Climate 4, 365–368, as
 * Bartlein and Shafer 2019, Geoscientific Model Development 12, 3889–3913, use it.
 */
public final class DailyNormals {
    private static final int MONTHS = 12;
    private static final int HARMONICS = 6;
    private static final double COLDEST_C = -60;
    private static final double WARMEST_C = 55;

    private final double meanC;
    private final double[] cosineC = new double[HARMONICS + 1];
    private final double[] sineC = new double[HARMONICS + 1];

    /**
     * From the months.
     *
     * @param monthlyMeansC mean temperature of the air, January first, all twelve, −60 to 55 °C
     */
    public DailyNormals(List<Double> monthlyMeansC) {
        if (monthlyMeansC.size() != MONTHS) {
            throw new Refused(new ChangeOverSaid.NotAllMonths(monthlyMeansC.size()));
        }
        monthlyMeansC.forEach(mean -> Range.check(Input.MONTHLY_MEAN, mean, COLDEST_C, WARMEST_C, "°C"));
        meanC = monthlyMeansC.stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
        for (int j = 1; j <= HARMONICS; j++) {
            double quarter = Math.PI * j / MONTHS;
            double share = (j == HARMONICS ? 1.0 : 2.0) / MONTHS * quarter / Math.sin(quarter);
            for (int month = 0; month < MONTHS; month++) {
                double angle = angle(j, month + 0.5);
                cosineC[j] += share * monthlyMeansC.get(month) * Math.cos(angle);
                sineC[j] += share * monthlyMeansC.get(month) * Math.sin(angle);
            }
        }
    }

    /** From the climate of a place: the mean of a month lies midway between those of its daily minima and maxima. */
    public static DailyNormals of(Climate climate) {
        return new DailyNormals(climate.months().stream()
                .map(month -> (month.meanDailyMinimumC() + month.meanDailyMaximumC()) / 2)
                .toList());
    }

    /** Mean temperature to expect in the middle of the day, °C. */
    public double meanC(LocalDate day) {
        return meanC(day.getMonthValue() - 1 + (day.getDayOfMonth() - 0.5) / day.lengthOfMonth());
    }

    /**
     * At a time of the year.
     *
     * @param months since the beginning of the year, 0 to 12
     */
    double meanC(double months) {
        double sum = meanC;
        for (int j = 1; j <= HARMONICS; j++) {
            sum += cosineC[j] * Math.cos(angle(j, months)) + sineC[j] * Math.sin(angle(j, months));
        }
        return sum;
    }

    private static double angle(int harmonic, double months) {
        return 2 * Math.PI * harmonic * months / MONTHS;
    }
}
