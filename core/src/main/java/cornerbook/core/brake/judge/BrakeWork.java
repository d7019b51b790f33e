package cornerbook.core.brake.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import java.util.Set;

/** What hands have done at the brakes, by what was recorded. */
public final class BrakeWork {
    static final Set<Measure> WORK = Set.of(
            Measure.BRACKET_CLEANED,
            Measure.PADS_REPLACED,
            Measure.DISC_REPLACED,
            Measure.BRAKE_HARDWARE_REPLACED,
            Measure.SHOES_CLEANED,
            Measure.SHOES_REPLACED,
            Measure.DRUM_REPLACED);

    private BrakeWork() {}

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
