package cornerbook.core.air;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.air.AirSaid.Caution;
import cornerbook.core.air.AirSaid.Computed;
import cornerbook.core.air.AirSaid.Input;
import cornerbook.core.air.AirSaid.Origin;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a wheel's pressure sensor reads against a gauge on the same tyre. Where both temperatures are known, the sensor's
 * pressure is brought to the tyre's by the ideal gas; else they are taken to be at one temperature. The car warns by the
 * sensor: it warns at 75 % of the placard less what the sensor reads too much.
 *
 * @param sensorKpa as read
 * @param gaugeKpa what the gauge shows too much taken off
 * @param atTyreKpa the sensor's pressure at the tyre's temperature; {@code sensorKpa} where a temperature is not known
 * @param differenceKpa sensor less gauge
 * @param warnsAtKpa pressure in the tyre at which the warning comes
 */
public record SensorCheck(
        double sensorKpa,
        double gaugeKpa,
        double atTyreKpa,
        double differenceKpa,
        double placardKpa,
        double warnsAtKpa,
        Answer answer,
        Explanation explanation)
        implements Explained {
    /** Within this a sensor is accurate: 1 to 2 psi (trade literature). */
    public static final double ACCURATE_KPA = 13.8;

    /** What the trade literature says, 1 to 2 psi. */
    public static final Between ACCURATE = new Between(ACCURATE_KPA / 2, ACCURATE_KPA, "kPa", 0);

    /** What the difference says. */
    public enum Answer {
        ACCURATE,
        OFF,
        /** Off by a quarter of the placard and more: no warning would come in time, or one that never ends. */
        USELESS
    }

    /**
     * The comparison.
     *
     * @param sensorKpa 0 to 1000 kPa gauge
     * @param sensorC by the sensor itself, −50 to 90 °C; null where it is not shown
     * @param gaugeKpa 0 to 1000 kPa gauge, true
     * @param tyreC when the gauge was read, −50 to 90 °C; null where it is not known
     * @param placardKpa 100 to 800 kPa gauge
     */
    public static SensorCheck of(
            double sensorKpa, @Nullable Double sensorC, double gaugeKpa, @Nullable Double tyreC, double placardKpa) {
        check(Input.SENSOR_PRESSURE, sensorKpa, 0, 1000, "kPa");
        check(Input.GAUGE_PRESSURE, gaugeKpa, 0, 1000, "kPa");
        check(Input.PLACARD_PRESSURE, placardKpa, 100, 800, "kPa");
        double atTyreKpa = sensorKpa;
        var steps = new ArrayList<Step>();
        if (sensorC != null && tyreC != null) {
            check(Input.SENSOR_TEMPERATURE, sensorC, -50, 90, "°C");
            check(Input.TYRE_TEMPERATURE, tyreC, -50, 90, "°C");
            atTyreKpa = GasLaw.gaugePressureKpa(sensorKpa, sensorC, tyreC);
            steps.add(new Step(
                    Computed.SENSOR_AT_TYRE_TEMPERATURE,
                    GasLaw.formula(sensorKpa, sensorC, tyreC),
                    atTyreKpa,
                    "kPa",
                    Origin.IDEAL_GAS));
        }
        double differenceKpa = atTyreKpa - gaugeKpa;
        double warnsAtKpa = Math.max(0, PressureCurve.WARNING_SHARE * placardKpa - differenceKpa);
        double bandKpa = (1 - PressureCurve.WARNING_SHARE) * placardKpa;
        var answer = Math.abs(differenceKpa) <= ACCURATE_KPA
                ? Answer.ACCURATE
                : Math.abs(differenceKpa) < bandKpa ? Answer.OFF : Answer.USELESS;
        steps.add(new Step(
                Computed.SENSOR_LESS_GAUGE,
                Formula.of("{} − {}", Amount.significant(atTyreKpa, "kPa", 4), Amount.significant(gaugeKpa, "kPa", 4)),
                differenceKpa,
                "kPa",
                new AirSaid.SensorAccuracy(ACCURATE)));
        steps.add(new Step(
                Computed.WARNING_BELOW,
                new AirSaid.SensorWarningFormula(
                        Amount.exact(PressureCurve.WARNING_SHARE, ""), Amount.significant(placardKpa, "kPa", 4)),
                warnsAtKpa,
                "kPa",
                Said.verbatim("49 CFR 571.138, S4.2")));
        return new SensorCheck(
                sensorKpa,
                gaugeKpa,
                atTyreKpa,
                differenceKpa,
                placardKpa,
                warnsAtKpa,
                answer,
                new Explanation(
                        switch (answer) {
                            case ACCURATE -> List.of();
                            case OFF -> List.of(Caution.SENSOR_OFF);
                            case USELESS -> List.of(Caution.SENSOR_USELESS);
                        },
                        steps));
    }
}
