package cornerbook.core.air.judge;

import cornerbook.core.air.PressureCurve;
import cornerbook.core.air.SensorCheck;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.UsedGauge;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * Findings on what the sensor of a wheel reads against the gauge: both after the tyre was set, the gauge's offset taken off,
 * the sensor's pressure brought from its own temperature to that of the tyres by the ideal gas.
 */
public final class SensorPressureFindings {
    private static final String SOURCE =
            "sensors are accurate to 1 to 2 psi (trade literature); the warning has to come at 25 % below the placard, 49 CFR 571.138 S4.2";

    private SensorPressureFindings() {}

    public static List<Finding> of(Vehicle vehicle, Visit visit, StandingReadings readings) {
        var gauge = UsedGauge.of(visit);
        var findings = new ArrayList<Finding>();
        for (var corner : Corner.values()) {
            var tag = visit.leftOn().get(corner);
            if (tag == null) {
                continue;
            }
            var set = readings.ofWheel(Measure.PRESSURE_SET, tag);
            readings.ofWheel(Measure.SENSOR_PRESSURE, tag)
                    .ifPresent(sensor -> set.ifPresent(
                            reading -> findings.add(finding(corner, tag, sensor, reading, gauge, vehicle, readings))));
        }
        return findings;
    }

    private static Finding finding(
            Corner corner,
            String tag,
            Reading sensor,
            Reading set,
            UsedGauge gauge,
            Vehicle vehicle,
            StandingReadings readings) {
        double placardKpa = vehicle.axle(corner.axle()).placardPressureKpa();
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
                new Evidence("gauge", "%.0f kPa".formatted(setKpa), gauge.how(set)),
                new Evidence("sensor", "%.0f kPa".formatted(sensor.value()), Evidence.howRead(sensor))));
        own.ifPresent(ownC -> tyre.ifPresent(tyreC -> evidence.add(new Evidence(
                "sensor at the tyres' temperature",
                "%.0f kPa".formatted(check.atTyreKpa()),
                "ideal gas from %.0f °C to %.0f °C".formatted(ownC, tyreC).replace('-', '−')))));
        evidence.add(new Evidence(
                "the warning would come at",
                "%.0f kPa".formatted(check.warnsAtKpa()),
                "25 %% below the placard's %.0f kPa, less what the sensor reads too much".formatted(placardKpa)));
        return new Finding(
                new Subject(Subject.Part.PRESSURE_SENSOR, corner, tag, null),
                verdict,
                "%s sensor reads %s against the gauge".formatted(tag, signed(check.differenceKpa())),
                switch (verdict) {
                    case HOLDS -> "The pressure sensor at %s reads what the gauge reads.".formatted(corner);
                    case RUNS_OUT ->
                        "The pressure sensor at %s does not read what the gauge reads; make sure that the car knows where it is, and go by a gauge until it is changed."
                                .formatted(corner);
                    default ->
                        "The pressure sensor at %s reads so wrong that its warning is of no use; change it, or teach the car where it is."
                                .formatted(corner);
                },
                null,
                null,
                Math.clamp(
                        1 - Math.abs(check.differenceKpa()) / (placardKpa * (1 - PressureCurve.WARNING_SHARE)), 0, 1),
                evidence,
                SOURCE);
    }

    private static String signed(double kpa) {
        return "%+.0f kPa".formatted(kpa).replace('-', '−');
    }
}
