package cornerbook.core.brake.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What was begun at the brakes and is not recorded as ended: the car must not leave before. Common practice, no source; every one of
 * them is forgotten now and then.
 */
public final class OpenBrakeWork {
    static final Set<Measure> WORK = Set.of(
            Measure.BRACKET_CLEANED, Measure.PADS_REPLACED, Measure.DISC_REPLACED, Measure.BRAKE_HARDWARE_REPLACED);

    private OpenBrakeWork() {}

    /** One line each, as "LF caliper: work was done there and it is not recorded as closed"; empty when all is ended. */
    public static List<String> of(Vehicle vehicle, Visit visit) {
        var readings = new StandingReadings(visit);
        var open = new ArrayList<String>();
        if (inServiceMode(readings)) {
            open.add("parking brake: it went into service mode and is not recorded as out and cycled");
        }
        boolean worked = false;
        for (var corner : Corner.values()) {
            if (!wasServiced(corner, readings)) {
                continue;
            }
            var at = new BrakeCorner(corner, vehicle, readings);
            worked = true;
            if (!at.done(Measure.CALIPER_CLOSED)) {
                open.add("%s caliper: work was done there and it is not recorded as closed".formatted(corner));
            }
            if (!at.done(Measure.BRACKET_BOLTS_TORQUED)) {
                open.add("%s bracket bolts: work was done there and no torque is recorded".formatted(corner));
            }
        }
        if (worked && !done(readings, Measure.PEDAL_PUMPED)) {
            open.add(
                    "brake pedal: brakes were worked on and it is not recorded as pumped; it must be before the car moves");
        }
        return List.copyOf(open);
    }

    public static boolean inServiceMode(StandingReadings readings) {
        return done(readings, Measure.PARKING_BRAKE_IN_SERVICE_MODE) && !done(readings, Measure.PARKING_BRAKE_CYCLED);
    }

    /** Whether hands were at this brake for more than a look. */
    public static boolean wasServiced(Corner corner, StandingReadings readings) {
        return readings.ofCorner(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null)
                        .isPresent()
                || WORK.stream()
                        .flatMap(measure -> readings.ofCorner(measure, corner, null).stream())
                        .anyMatch(reading -> Math.round(reading.value()) == 1);
    }

    private static boolean done(StandingReadings readings, Measure measure) {
        return readings.ofVehicle(measure)
                .filter(reading -> Math.round(reading.value()) == 1)
                .isPresent();
    }
}
