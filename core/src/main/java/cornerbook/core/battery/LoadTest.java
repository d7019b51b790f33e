package cornerbook.core.battery;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.BatterySaid.Part;
import cornerbook.core.battery.BatterySaid.Sentence;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * Load test: half of the rated cranking current for 15 s, and the voltage at its end against the least for the battery's temperature:
 * 9.6 V at 21 °C, 9.5 at 16, 9.4 at 10, 9.3 at 4, 9.1 at −1, 8.9 at −7, 8.7 at −12, 8.5 at −18 (a battery maker's manual). Lead-acid
 * only, charged before.
 *
 * @param loadA what to draw
 * @param temperatureC of the battery
 * @param passes at least the least voltage
 */
public record LoadTest(
        double loadA, double volts, double temperatureC, double leastVolts, boolean passes, Explanation explanation)
        implements Explained {
    private static final double[] TEMPERATURE_C = {-18, -12, -7, -1, 4, 10, 16, 21};
    private static final double[] LEAST_V = {8.5, 8.7, 8.9, 9.1, 9.3, 9.4, 9.5, 9.6};

    /** The verdict on the voltage read after 15 s, 0 to 13 V, at −18 to 60 °C. */
    public static LoadTest of(Chemistry chemistry, double ratedA, double volts, double temperatureC) {
        if (!chemistry.isLead()) {
            throw new Refused(Sentence.LITHIUM_LOAD_TEST);
        }
        check(Part.RATED_CURRENT, ratedA, 50, 2000, "A");
        check(Part.VOLTAGE_UNDER_LOAD, volts, 0, 13, "V");
        check(Part.TEMPERATURE, temperatureC, TEMPERATURE_C[0], 60, "°C");
        double leastV = leastVolts(temperatureC);
        boolean passes = volts >= leastV;
        return new LoadTest(
                ratedA / 2,
                volts,
                temperatureC,
                leastV,
                passes,
                new Explanation(
                        passes ? List.of() : List.of(Sentence.REPEAT_LOAD_TEST),
                        List.of(
                                new Step(
                                        Label.LOAD_FOR_15_S,
                                        Label.HALF_OF_RATED,
                                        ratedA / 2,
                                        "A",
                                        Label.SERVICE_LITERATURE),
                                new Step(
                                        new BatterySaid.LeastVoltageAt(Amount.significant(temperatureC, "°C", 4)),
                                        Label.TABLE_LINEAR,
                                        leastV,
                                        "V",
                                        Label.LOAD_TEST_SOURCE))));
    }

    /** The least voltage at a temperature of the battery; outside −18 to 21 °C that of the nearer end. */
    public static double leastVolts(double temperatureC) {
        return StateOfCharge.between(TEMPERATURE_C, LEAST_V, temperatureC);
    }
}
