package cornerbook.core.visit;

import cornerbook.core.corner.Corner;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Findings on the pressure sensors of the wheels that the car leaves on: their batteries, and what the car has to learn. */
final class SensorFindings {
    /** A sensor's battery is soldered in and lasts five to ten years; from this age it is said. Common practice, no source. */
    private static final double OLD_YEARS = 7;

    private static final double END_YEARS = 10;
    private static final double DAYS_PER_YEAR = 365.25;
    private static final String SOURCE = "5 to 10 years of a sensor's battery: common practice, no source";

    private SensorFindings() {}

    static List<Finding> of(CarHistory history, Visit visit, List<String> notJudged) {
        var findings = new ArrayList<Finding>();
        var warning = history.vehicle().details().pressureWarning();
        var leftOn = visit.leftOn();
        history.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .forEach(wheel -> leftOn.entrySet().stream()
                        .filter(entry -> entry.getValue().equals(wheel.tag()))
                        .map(Map.Entry::getKey)
                        .forEach(corner -> old(corner, wheel, visit, findings)));
        boolean changed = !leftOn.isEmpty() && !leftOn.equals(visit.arrivedOn());
        if (changed && warning.kind() != null) {
            notJudged.add(learning(warning));
        }
        return findings;
    }

    private static String learning(PressureWarning warning) {
        if (warning.kind() == PressureWarning.Kind.INDIRECT) {
            return "pressure warning: it goes by the turning of the wheels; reset it after the pressures are set";
        }
        var how = warning.learning();
        return "pressure warning: other wheels are on; "
                + (how == null
                        ? "look up how this car learns their sensors"
                        : switch (how) {
                            case BY_ITSELF -> "the car learns their sensors by itself";
                            case BY_TOOL -> "their sensors have to be taught with the tool";
                            case BY_DRIVING -> "their sensors are learned while driving; tell the customer";
                        });
    }

    private static void old(Corner corner, Wheel wheel, Visit visit, List<Finding> findings) {
        var since = wheel.details().sensorBatteryOn();
        if (since == null || since.isAfter(visit.date())) {
            return;
        }
        double years = ChronoUnit.DAYS.between(since, visit.date()) / DAYS_PER_YEAR;
        boolean old = years >= OLD_YEARS;
        findings.add(new Finding(
                new Subject(Subject.Part.PRESSURE_SENSOR, corner, wheel.tag(), null),
                old ? Verdict.RUNS_OUT : Verdict.HOLDS,
                "%s sensor battery is %.1f years old".formatted(wheel.tag(), years),
                old
                        ? "The pressure sensor in the wheel at %s is at the age where its battery ends; change it with the next tyre."
                                .formatted(corner)
                        : "The pressure sensor in the wheel at %s has years left.".formatted(corner),
                old ? since.plusDays(Math.round(END_YEARS * DAYS_PER_YEAR)) : null,
                null,
                Math.clamp(1 - years / END_YEARS, 0, 1),
                List.of(new Evidence(
                        "battery since",
                        since.toString(),
                        "sensor %s, %s"
                                .formatted(
                                        wheel.sensorId() == null ? "without identity" : wheel.sensorId(),
                                        wheel.details().sensorType() == null
                                                ? "type not known"
                                                : wheel.details().sensorType()))),
                SOURCE));
    }
}
