package cornerbook.core.battery;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.BatterySaid.Part;
import cornerbook.core.battery.HealthTest.Judgement;
import cornerbook.core.say.Amount;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * Measured against rated cranking current. A tester that does not know the temperature measures less in the cold; its
 * reading is divided by the share of power that a sound battery has there: 100 % at 26.7 °C, 65 % at 0 °C, 40 % at −18 °C, linear
 * between (a technical manual: 80 °F, 30 °F, 0 °F). What the share means says {@link HealthTest#CRANKING_CURRENT}.
 *
 * @param share of the rating, 0 and more
 */
public record BatteryHealth(
        double measuredA,
        double ratedA,
        RatingStandard standard,
        double share,
        Judgement judgement,
        Explanation explanation)
        implements Explained {
    /** Colder than this a battery is not tested by the book (a vehicle maker's manual: 15 to 38 °C). */
    private static final double TESTED_FROM_C = 15;

    private static final double[] TEMPERATURE_C = {-17.8, 0, 26.7};
    private static final double[] POWER_SHARE = {0.40, 0.65, 1.00};

    /**
     * The health, both currents by the same standard.
     *
     * @param temperatureC of the battery, −18 to 60 °C
     * @param corrected whether the tester has been told the temperature
     */
    public static BatteryHealth of(
            double measuredA, double ratedA, RatingStandard standard, double temperatureC, boolean corrected) {
        check(Part.MEASURED_CURRENT, measuredA, 0, 3000, "A");
        check(Part.RATED_CURRENT, ratedA, 50, 2000, "A");
        check(Part.TEMPERATURE, temperatureC, TEMPERATURE_C[0], 60, "°C");
        double power = corrected ? 1 : powerShare(temperatureC);
        double share = measuredA / (ratedA * power);
        var judgement = HealthTest.CRANKING_CURRENT.judge(share);
        return new BatteryHealth(
                measuredA,
                ratedA,
                standard,
                share,
                judgement,
                new Explanation(
                        judgement == Judgement.REPLACE
                                ? List.of(new BatterySaid.ChargeBeforeCondemned(standard))
                                : List.of(),
                        List.of(
                                new Step(
                                        Label.SHARE_OF_POWER,
                                        corrected
                                                ? Label.TOLD_TEMPERATURE
                                                : new BatterySaid.PowerAt(Amount.significant(temperatureC, "°C", 4)),
                                        power * 100,
                                        "%",
                                        Label.POWER_SOURCE),
                                new Step(
                                        Label.SHARE_OF_RATING,
                                        new BatterySaid.ShareFormula(
                                                Amount.significant(measuredA, "A", 4),
                                                Amount.significant(ratedA, "A", 4),
                                                standard),
                                        share * 100,
                                        "%",
                                        Label.HEALTH_SOURCE))));
    }

    /**
     * Whether a battery that fails, tested at {@code temperatureC}, may fail by the cold alone: it is colder than a test asks for, and
     * would be sound if the tester had not been told so.
     */
    public static boolean mayFailByCold(double share, double temperatureC) {
        return temperatureC < TESTED_FROM_C
                && share / powerShare(temperatureC) >= HealthTest.CRANKING_CURRENT.leastShare();
    }

    /** Share of its power that a sound battery has. */
    private static double powerShare(double temperatureC) {
        return StateOfCharge.between(TEMPERATURE_C, POWER_SHARE, temperatureC);
    }
}
