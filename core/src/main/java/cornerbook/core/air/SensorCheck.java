package cornerbook.core.air;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    /** Within this a sensor is accurate: 1 to 2 psi (trade literature). */
    public static final double ACCURATE_KPA = 13.8;

    /** What the difference says. */
    public enum Answer {
        ACCURATE,
        OFF,
        /** Off by a quarter of the placard and more: no warning would come in time, or one that never ends. */
        USELESS
    }

    public SensorCheck {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
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
        check("pressure of the sensor", sensorKpa, 0, 1000, "kPa");
        check("pressure of the gauge", gaugeKpa, 0, 1000, "kPa");
        check("placard pressure", placardKpa, 100, 800, "kPa");
        double atTyreKpa = sensorKpa;
        var steps = new ArrayList<Step>();
        if (sensorC != null && tyreC != null) {
            check("temperature of the sensor", sensorC, -50, 90, "°C");
            check("temperature of the tyre", tyreC, -50, 90, "°C");
            atTyreKpa = GasLaw.gaugePressureKpa(sensorKpa, sensorC, tyreC);
            steps.add(new Step(
                    "sensor at the tyre's temperature",
                    "(%s + 101.325) (%s + 273.15)/(%s + 273.15) − 101.325"
                            .formatted(Step.digits(sensorKpa), Step.digits(tyreC), Step.digits(sensorC)),
                    atTyreKpa,
                    "kPa",
                    "ideal gas, volume constant"));
        }
        double differenceKpa = atTyreKpa - gaugeKpa;
        double warnsAtKpa = Math.max(0, PressureCurve.WARNING_SHARE * placardKpa - differenceKpa);
        double bandKpa = (1 - PressureCurve.WARNING_SHARE) * placardKpa;
        var answer = Math.abs(differenceKpa) <= ACCURATE_KPA
                ? Answer.ACCURATE
                : Math.abs(differenceKpa) < bandKpa ? Answer.OFF : Answer.USELESS;
        steps.add(new Step(
                "sensor less gauge",
                "%s kPa − %s kPa".formatted(Step.digits(atTyreKpa), Step.digits(gaugeKpa)),
                differenceKpa,
                "kPa",
                "accurate to 1 to 2 psi: trade literature"));
        steps.add(new Step(
                "the warning comes below",
                "0.75 × placard %s kPa − what the sensor reads too much".formatted(Step.digits(placardKpa)),
                warnsAtKpa,
                "kPa",
                "49 CFR 571.138, S4.2"));
        return new SensorCheck(
                sensorKpa,
                gaugeKpa,
                atTyreKpa,
                differenceKpa,
                placardKpa,
                warnsAtKpa,
                answer,
                switch (answer) {
                    case ACCURATE -> List.of();
                    case OFF ->
                        Said.verbatims(
                                "Make sure that the car knows in which wheel this sensor is; go by a gauge until it is changed.");
                    case USELESS ->
                        Said.verbatims("The sensor's warning is of no use: change it, or teach the car in which wheel it is.");
                },
                steps);
    }
}
