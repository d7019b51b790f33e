package cornerbook.core.brake.seizing.judge;

import cornerbook.core.brake.seizing.CensoredTime;
import cornerbook.core.brake.seizing.PadHistory;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Case;
import java.util.List;

/**
 * How likely a pad of one car has seized, over the months since its guides were cleaned.
 *
 * @param seen what is known of the times of this car's pads, in months since a cleaning
 */
public record SeizingCurve(SeizingHazard hazard, SeizingExposure exposure, List<CensoredTime> seen) {
    private static final double DAYS_PER_YEAR = 365.25;

    public SeizingCurve {
        seen = List.copyOf(seen);
    }

    /** By what the book has learned, else by the priors and the pads of this car. */
    public static SeizingCurve of(Case given) {
        var learned = given.knowledge().seizing();
        double kmPerDay = given.distance().meanKm();
        return new SeizingCurve(
                learned == null
                        ? SeizingHazard.learn(histories(given.vehicle(), given.visits(), kmPerDay))
                        : learned.hazard(),
                exposure(given.vehicle(), kmPerDay),
                PadClock.of(given).stream()
                        .flatMap(clock -> clock.times().stream())
                        .toList());
    }

    /** Each pad of the car from service to service, with what it is exposed to. */
    public static List<PadHistory> histories(Vehicle vehicle, List<Visit> visits, double kmPerDay) {
        var exposure = exposure(vehicle, kmPerDay);
        return PadClock.of(vehicle, visits).stream()
                .flatMap(clock -> clock.times().stream())
                .map(time -> new PadHistory(time, exposure))
                .toList();
    }

    private static SeizingExposure exposure(Vehicle vehicle, double kmPerDay) {
        return vehicle.details().use().exposure(kmPerDay * DAYS_PER_YEAR, vehicle.highVoltage());
    }
}
