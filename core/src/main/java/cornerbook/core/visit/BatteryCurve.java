package cornerbook.core.visit;

import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.HealthTrend;
import java.util.List;
import java.util.Optional;

/**
 * The health of the 12 V battery over the visits since it was installed: measured over rated cranking current.
 *
 * @param points earliest first
 * @param leastShare below which it is at its end
 */
public record BatteryCurve(List<HealthTrend.Point> points, double leastShare) {
    public BatteryCurve {
        points = List.copyOf(points);
    }

    static BatteryCurve of(Vehicle vehicle, List<Visit> visits) {
        return new BatteryCurve(points(vehicle, visits), BatteryHealth.SOUND_SHARE);
    }

    /** The straight line through them; empty when they are too few. */
    public Optional<HealthTrend> trend() {
        return HealthTrend.of(points, leastShare);
    }

    private static List<HealthTrend.Point> points(Vehicle vehicle, List<Visit> visits) {
        var rated = vehicle.battery().ratedCrankingCurrentA();
        var installed = vehicle.battery().installedOn();
        if (rated == null) {
            return List.of();
        }
        return visits.stream()
                .filter(visit -> installed == null || !visit.date().isBefore(installed))
                .flatMap(visit -> new CurrentReadings(visit)
                                .ofVehicle(Measure.BATTERY_CRANKING_CURRENT)
                                .map(reading -> new HealthTrend.Point(visit.date(), reading.value() / rated))
                                .stream())
                .toList();
    }
}
