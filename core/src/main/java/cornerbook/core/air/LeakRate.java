package cornerbook.core.air;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.air.AirSaid.Caution;
import cornerbook.core.air.AirSaid.Computed;
import cornerbook.core.air.AirSaid.Input;
import cornerbook.core.air.AirSaid.Origin;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * Air lost between two readings, with the temperature taken out: both are brought to 20 °C by the ideal gas, and their
 * difference to 30 days. Its error is that of two readings by one gauge, √2 times the gauge's.
 *
 * @param firstKpa first reading, brought to 20 °C
 * @param secondKpa second reading, brought to 20 °C
 * @param lossKpa per 30 days at 20 °C; negative when the second reading is higher
 * @param errorKpa of it, either way
 */
public record LeakRate(
        double days,
        double firstKpa,
        double secondKpa,
        double gaugeErrorKpa,
        double lossKpa,
        double errorKpa,
        Answer answer,
        Explanation explanation)
        implements Explained {
    /** Lost through a sound tyre in a month: about 1 psi (service literature). */
    public static final double USUAL_LOSS_KPA = 6.894757;

    /** Twice what is usual is called a leak. Common practice, no source. */
    public static final double LEAK_FROM_KPA = 2 * USUAL_LOSS_KPA;

    private static final double DAYS_PER_MONTH = 30;
    /** Both readings are brought to it. */
    public static final double COMPARED_AT_C = 20;

    /** What the two readings tell. */
    public enum Answer {
        TIGHT,
        SLOW_LEAK,
        NOT_TOLD_APART
    }

    /** One cold reading: gauge pressure and the tyre's temperature. */
    public record At(double pressureKpa, double temperatureC) {
        public At {
            check(Input.PRESSURE_READ, pressureKpa, 0, 1000, "kPa");
            check(Input.TYRE_TEMPERATURE, temperatureC, -50, 90, "°C");
        }

        double comparedKpa() {
            return GasLaw.gaugePressureKpa(pressureKpa, temperatureC, COMPARED_AT_C);
        }
    }

    /** The loss between two readings {@code days} apart, 0.1 to 1000 days, with no air added between them. */
    public static LeakRate of(At first, At second, double days, double gaugeErrorKpa) {
        check(Input.DAYS_BETWEEN, days, 0.1, 1000, "d");
        check(Input.GAUGE_ERROR, gaugeErrorKpa, 0, 50, "kPa");
        double lossKpa = (first.comparedKpa() - second.comparedKpa()) / days * DAYS_PER_MONTH;
        double errorKpa = Math.sqrt(2) * gaugeErrorKpa / days * DAYS_PER_MONTH;
        var answer = lossKpa - errorKpa > LEAK_FROM_KPA
                ? Answer.SLOW_LEAK
                : lossKpa + errorKpa <= LEAK_FROM_KPA ? Answer.TIGHT : Answer.NOT_TOLD_APART;
        var cautions = switch (answer) {
            case SLOW_LEAK -> List.<Said>of(Caution.SLOW_LEAK);
            case NOT_TOLD_APART -> List.<Said>of(Caution.NOT_TOLD_APART);
            case TIGHT -> List.<Said>of();
        };
        return new LeakRate(
                days,
                first.comparedKpa(),
                second.comparedKpa(),
                gaugeErrorKpa,
                lossKpa,
                errorKpa,
                answer,
                new Explanation(
                        cautions,
                        List.of(
                                compared(false, first),
                                compared(true, second),
                                new Step(
                                        Computed.LOSS_IN_30_DAYS,
                                        new AirSaid.LossFormula(
                                                Amount.significant(days, "", 4),
                                                Amount.significant(errorKpa, "kPa", 4)),
                                        lossKpa,
                                        "kPa",
                                        new AirSaid.UsualLoss(Amount.of(USUAL_LOSS_KPA, "kPa"))))));
    }

    private static Step compared(boolean second, At reading) {
        return new Step(
                new AirSaid.ComparedReading(second, Amount.of(COMPARED_AT_C, "°C")),
                GasLaw.formula(reading.pressureKpa(), reading.temperatureC(), COMPARED_AT_C),
                reading.comparedKpa(),
                "kPa",
                Origin.IDEAL_GAS);
    }
}
