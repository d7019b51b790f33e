package cornerbook.core.visit;

import cornerbook.core.corner.Corner;
import cornerbook.core.tyre.GasLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Findings on what the sensor of a wheel reads against the gauge: both after the tyre was set, the gauge's offset taken off,
 * the sensor's pressure brought from its own temperature to that of the tyres by the ideal gas.
 */
final class SensorPressureFindings {
    /** Within this a sensor is accurate: ±1 to 2 psi (trade literature). */
    private static final double ACCURATE_KPA = 13.8;
    /** Share of the placard pressure that may be lost before the warning (49 CFR 571.138, S4.2). */
    private static final double WARNING_BAND = 0.25;

    private static final String SOURCE =
            "sensors are accurate to 1 to 2 psi (trade literature); the warning has to come at 25 % below the placard, 49 CFR 571.138 S4.2";

    private SensorPressureFindings() {}

    static List<Finding> of(Vehicle vehicle, Visit visit, CurrentReadings readings) {
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
            CurrentReadings readings) {
        double placardKpa = vehicle.axle(corner.axle()).placardPressureKpa();
        double setKpa = gauge.kpa(set);
        var atTyre = atTyreTemperature(sensor, tag, readings);
        double sensorKpa = atTyre.map(Converted::kpa).orElse(sensor.value());
        double differenceKpa = sensorKpa - setKpa;
        double bandKpa = WARNING_BAND * placardKpa;
        var verdict = Math.abs(differenceKpa) <= ACCURATE_KPA
                ? Verdict.HOLDS
                : Math.abs(differenceKpa) < bandKpa ? Verdict.RUNS_OUT : Verdict.SPENT;
        var evidence = new ArrayList<Evidence>(List.of(
                new Evidence("gauge", "%.0f kPa".formatted(setKpa), gauge.how(set)),
                new Evidence(
                        "sensor",
                        "%.0f kPa".formatted(sensor.value()),
                        "reading, written \"" + sensor.asWritten() + "\"")));
        atTyre.map(Converted::evidence).ifPresent(evidence::add);
        evidence.add(new Evidence(
                "the warning would come at",
                "%.0f kPa".formatted(placardKpa - bandKpa - differenceKpa),
                "25 %% below the placard's %.0f kPa, less what the sensor reads too much".formatted(placardKpa)));
        return new Finding(
                new Subject(Subject.Part.PRESSURE_SENSOR, corner, tag, null),
                verdict,
                "%s sensor reads %s against the gauge".formatted(tag, signed(differenceKpa)),
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
                Math.clamp(1 - Math.abs(differenceKpa) / bandKpa, 0, 1),
                evidence,
                SOURCE);
    }

    private static String signed(double kpa) {
        return "%+.0f kPa".formatted(kpa).replace('-', '−');
    }

    private record Converted(double kpa, Evidence evidence) {}

    /** Empty when one of the two temperatures is not known; then both are taken to be the same. */
    private static Optional<Converted> atTyreTemperature(Reading sensor, String tag, CurrentReadings readings) {
        return readings.ofWheel(Measure.SENSOR_TEMPERATURE, tag)
                .flatMap(own -> readings.ofVehicle(Measure.TYRE_TEMPERATURE).map(tyre -> {
                    double kpa = GasLaw.gaugePressureKpa(sensor.value(), own.value(), tyre.value());
                    return new Converted(
                            kpa,
                            new Evidence(
                                    "sensor at the tyres' temperature",
                                    "%.0f kPa".formatted(kpa),
                                    "ideal gas from %.0f °C to %.0f °C"
                                            .formatted(own.value(), tyre.value())
                                            .replace('-', '−')));
                }));
    }
}
