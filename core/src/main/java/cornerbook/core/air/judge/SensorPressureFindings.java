package cornerbook.core.air.judge;

import cornerbook.core.air.PressureCurve;
import cornerbook.core.air.SensorCheck;
import cornerbook.core.air.judge.PressureSaid.Label;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.UsedGauge;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import java.util.ArrayList;
import java.util.List;

/**
 * Findings on what the sensor of a wheel reads against the gauge: both after the tyre was set, the gauge's offset taken off,
 * the sensor's pressure brought from its own temperature to that of the tyres by the ideal gas.
 */
public final class SensorPressureFindings {
    private SensorPressureFindings() {}

    public static Judgement judge(Case given) {
        var findings = new ArrayList<Finding>();
        for (var corner : Corner.values()) {
            var tag = given.visit().leftOn().get(corner);
            var placardKpa = given.vehicle().axle(corner.axle()).placardPressureKpa();
            if (tag == null || placardKpa == null) {
                continue;
            }
            var set = given.readings().ofWheel(Measure.PRESSURE_SET, tag);
            given.readings()
                    .ofWheel(Measure.SENSOR_PRESSURE, tag)
                    .ifPresent(sensor -> set.ifPresent(
                            reading -> findings.add(finding(given, corner, tag, sensor, reading, placardKpa))));
        }
        return Judgement.of(findings);
    }

    private static Finding finding(
            Case given, Corner corner, String tag, Reading sensor, Reading set, double placardKpa) {
        var readings = given.readings();
        var gauge = UsedGauge.of(given.visit());
        double setKpa = gauge.kpa(set);
        var own = readings.ofWheel(Measure.SENSOR_TEMPERATURE, tag).map(Reading::value);
        var tyre = readings.ofVehicle(Measure.TYRE_TEMPERATURE).map(Reading::value);
        var check = SensorCheck.of(sensor.value(), own.orElse(null), setKpa, tyre.orElse(null), placardKpa);
        var verdict = switch (check.answer()) {
            case ACCURATE -> Verdict.HOLDS;
            case OFF -> Verdict.RUNS_OUT;
            case USELESS -> Verdict.SPENT;
        };
        var evidence = new ArrayList<Evidence>(List.of(
                new Evidence(Label.GAUGE, kpa(setKpa), gauge.how(set)),
                new Evidence(Label.SENSOR, kpa(sensor.value()), Evidence.howRead(sensor))));
        own.ifPresent(ownC -> tyre.ifPresent(tyreC -> evidence.add(new Evidence(
                Label.SENSOR_AT_TYRES,
                kpa(check.atTyreKpa()),
                new PressureSaid.GasBetween(Amount.of(ownC, "°C"), Amount.of(tyreC, "°C"))))));
        evidence.add(new Evidence(
                Label.WARNING_WOULD_COME, kpa(check.warnsAtKpa()), new PressureSaid.QuarterBelowLess(kpa(placardKpa))));
        return new Finding(
                        new Subject(Subject.Part.PRESSURE_SENSOR, corner, tag, null),
                        verdict,
                        new PressureSaid.SensorAgainstGauge(tag, new Margin(check.differenceKpa(), "kPa", 0, true)),
                        switch (verdict) {
                            case HOLDS -> new PressureSaid.SensorRight(corner);
                            case RUNS_OUT -> new PressureSaid.SensorOff(corner);
                            default -> new PressureSaid.SensorUseless(corner);
                        },
                        null,
                        null,
                        Math.clamp(
                                1 - Math.abs(check.differenceKpa()) / (placardKpa * (1 - PressureCurve.WARNING_SHARE)),
                                0,
                                1),
                        evidence,
                        new PressureSaid.SensorSource(SensorCheck.ACCURATE))
                .todo(verdict == Verdict.RUNS_OUT ? Todo.Action.MEASURE_AGAIN : Todo.Action.REPLACE);
    }

    private static Amount kpa(double pressureKpa) {
        return Amount.of(pressureKpa, "kPa");
    }
}
