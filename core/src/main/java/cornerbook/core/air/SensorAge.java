package cornerbook.core.air;

import cornerbook.core.air.AirSaid.Caution;
import cornerbook.core.air.AirSaid.Computed;
import cornerbook.core.air.AirSaid.Origin;
import cornerbook.core.say.Refused;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * Age of the battery in a wheel's pressure sensor. It is soldered in and lasts five to ten years; from seven it is said, so
 * that the sensor is changed with the next tyre. Common practice, no source.
 *
 * @param since day from which it runs
 * @param years on the day asked
 * @param endsOn day on which ten years end
 * @param old from seven years
 */
public record SensorAge(LocalDate since, double years, LocalDate endsOn, boolean old, Explanation explanation)
        implements Explained {
    /** From this age it is said. Common practice, no source. */
    public static final double OLD_YEARS = 7;
    /** At this age it is taken to end. Common practice, no source. */
    public static final double END_YEARS = 10;

    private static final double DAYS_PER_YEAR = 365.25;

    /**
     * The age on a day.
     *
     * @throws IllegalArgumentException when the battery would run from a later day
     */
    public static SensorAge of(LocalDate since, LocalDate day) {
        if (since.isAfter(day)) {
            throw new Refused(new AirSaid.BatteryOfLaterDay(since, day));
        }
        double years = ChronoUnit.DAYS.between(since, day) / DAYS_PER_YEAR;
        boolean old = years >= OLD_YEARS;
        return new SensorAge(
                since,
                years,
                since.plusDays(Math.round(END_YEARS * DAYS_PER_YEAR)),
                old,
                new Explanation(
                        old ? List.of(Caution.SENSOR_ENDS) : List.of(),
                        List.of(new Step(
                                Computed.SENSOR_BATTERY_AGE,
                                new AirSaid.DaysSince(since),
                                years,
                                "years",
                                Origin.SENSOR_LIFE))));
    }
}
