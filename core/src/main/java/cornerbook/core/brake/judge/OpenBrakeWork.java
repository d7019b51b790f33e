package cornerbook.core.brake.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Judgement;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Set;

/**
 * What was begun at the brakes and is not recorded as ended: the car must not leave before. Common practice, no source; every one of
 * them is forgotten now and then.
 */
public final class OpenBrakeWork {
    static final Set<Measure> WORK = Set.of(
            Measure.BRACKET_CLEANED, Measure.PADS_REPLACED, Measure.DISC_REPLACED, Measure.BRAKE_HARDWARE_REPLACED);

    private OpenBrakeWork() {}

    /** One line each, as that a caliper is not recorded as closed; empty when all is ended. */
    public static Judgement judge(Case given) {
        var readings = given.readings();
        var open = new ArrayList<Said>();
        if (inServiceMode(readings)) {
            open.add(new BrakeSaid.ServiceModeOpen());
        }
        boolean worked = false;
        for (var corner : Corner.values()) {
            if (!wasServiced(corner, readings)) {
                continue;
            }
            var at = new BrakeCorner(corner, given.vehicle(), readings);
            worked = true;
            if (!at.done(Measure.CALIPER_CLOSED)) {
                open.add(new BrakeSaid.CaliperOpen(corner));
            }
            if (!at.done(Measure.BRACKET_BOLTS_TORQUED)) {
                open.add(new BrakeSaid.BracketBoltsOpen(corner));
            }
        }
        if (worked && !done(readings, Measure.PEDAL_PUMPED)) {
            open.add(new BrakeSaid.PedalOpen());
        }
        return Judgement.missing(open);
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
