package cornerbook.core.visit;

import cornerbook.core.brake.CensoredTime;
import cornerbook.core.brake.PadHistory;
import cornerbook.core.brake.SeizingExposure;
import cornerbook.core.brake.SeizingHazard;
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

    static SeizingCurve of(Vehicle vehicle, List<PadClock> clocks, double kmPerDay) {
        var exposure = vehicle.details().use().exposure(kmPerDay * DAYS_PER_YEAR, vehicle.electric());
        var seen = clocks.stream().flatMap(clock -> clock.times().stream()).toList();
        return new SeizingCurve(
                SeizingHazard.learn(seen.stream()
                        .map(time -> new PadHistory(time, exposure))
                        .toList()),
                exposure,
                seen);
    }
}
