package cornerbook.core.battery.judge;

import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.HealthTrend;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The 12 V battery over time: its health at the visits since it was installed, measured over rated cranking current, and how
 * long the car may stand.
 *
 * @param points earliest first
 * @param leastShare below which it is at its end
 * @param parked from full to the reserve, at the health of the last point, or that of a new one; null when nothing of the
 *     battery was read at this visit
 */
public record BatteryCurve(
        List<HealthTrend.Point> points,
        double leastShare,
        @Nullable ParkedDays parked) {
    public BatteryCurve {
        points = List.copyOf(points);
    }

    public static BatteryCurve of(Vehicle vehicle, List<Visit> visits) {
        var points = points(vehicle, visits);
        double health = points.isEmpty() ? 1 : points.getLast().share();
        var readings = new StandingReadings(visits.getLast());
        boolean read = Stream.of(Measure.BATTERY_VOLTAGE, Measure.BATTERY_CRANKING_CURRENT)
                .anyMatch(measure -> readings.ofVehicle(measure).isPresent());
        return new BatteryCurve(
                points, BatteryHealth.SOUND_SHARE, read ? BatteryFindings.parked(vehicle.battery(), health, 1) : null);
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
                .flatMap(visit -> new StandingReadings(visit)
                                .ofVehicle(Measure.BATTERY_CRANKING_CURRENT)
                                .map(reading -> new HealthTrend.Point(visit.date(), reading.value() / rated))
                                .stream())
                .toList();
    }
}
