package cornerbook.core.air;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    /** About 1 psi a month is lost through a sound tyre (service literature); twice that is called a leak (common practice, no source). */
    public static final double LEAK_FROM_KPA = 2 * 6.894757;

    private static final double DAYS_PER_MONTH = 30;
    private static final double COMPARED_AT_C = 20;

    /** What the two readings tell. */
    public enum Answer {
        TIGHT,
        SLOW_LEAK,
        NOT_TOLD_APART
    }

    public LeakRate {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** One cold reading: gauge pressure and the tyre's temperature. */
    public record At(double pressureKpa, double temperatureC) {
        public At {
            check("pressure read", pressureKpa, 0, 1000, "kPa");
            check("temperature of the tyre", temperatureC, -50, 90, "°C");
        }

        double comparedKpa() {
            return GasLaw.gaugePressureKpa(pressureKpa, temperatureC, COMPARED_AT_C);
        }
    }

    /** The loss between two readings {@code days} apart, 0.1 to 1000 days, with no air added between them. */
    public static LeakRate of(At first, At second, double days, double gaugeErrorKpa) {
        check("days between the readings", days, 0.1, 1000, "d");
        check("error of the gauge", gaugeErrorKpa, 0, 50, "kPa");
        double lossKpa = (first.comparedKpa() - second.comparedKpa()) / days * DAYS_PER_MONTH;
        double errorKpa = Math.sqrt(2) * gaugeErrorKpa / days * DAYS_PER_MONTH;
        var answer = lossKpa - errorKpa > LEAK_FROM_KPA
                ? Answer.SLOW_LEAK
                : lossKpa + errorKpa <= LEAK_FROM_KPA ? Answer.TIGHT : Answer.NOT_TOLD_APART;
        var cautions = switch (answer) {
            case SLOW_LEAK ->
                Said.verbatims("The tyre loses air: find the leak at valve, bead, rim or tread before it goes out.");
            case NOT_TOLD_APART ->
                Said.verbatims("Gauge and days do not tell a leak from none: measure again after more days.");
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
                cautions,
                List.of(
                        compared("first reading at 20 °C", first),
                        compared("second reading at 20 °C", second),
                        new Step(
                                "loss in 30 days",
                                "(first − second)/%s d × 30 d, ±√2 × gauge error = ±%s kPa"
                                        .formatted(Step.digits(days), Step.digits(errorKpa)),
                                lossKpa,
                                "kPa",
                                "about 1 psi a month is usual (service literature); a leak from twice that is common practice, no source")));
    }

    private static Step compared(String what, At reading) {
        return new Step(
                what,
                "(%s + 101.325) 293.15/(%s + 273.15) − 101.325"
                        .formatted(Step.digits(reading.pressureKpa()), Step.digits(reading.temperatureC())),
                reading.comparedKpa(),
                "kPa",
                "ideal gas, volume constant");
    }
}
