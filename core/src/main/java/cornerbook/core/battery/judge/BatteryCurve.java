package cornerbook.core.battery.judge;

import cornerbook.core.battery.HealthTest;
import cornerbook.core.battery.HealthTrend;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The 12 V battery over time: its health at the visits since it was installed, by one kind of test, and how long the car may
 * stand.
 *
 * @param test the one that counts for this car, or the other where that was never made
 * @param points earliest first, measured over rated
 * @param parked from full to the reserve, at the health of the last point, or that of a new one; null when nothing of the
 *     battery was read at this visit
 */
public record BatteryCurve(
        HealthTest test,
        List<HealthTrend.Point> points,
        @Nullable ParkedDays parked) {
    private static final List<Measure> OF_BATTERY = List.of(
            Measure.BATTERY_VOLTAGE,
            Measure.BATTERY_VOLTAGE_CHARGED,
            Measure.BATTERY_CRANKING_CURRENT,
            Measure.BATTERY_CRANKING_CURRENT_CHARGED,
            Measure.BATTERY_CAPACITY,
            Measure.STANDBY_CURRENT);

    public BatteryCurve {
        points = List.copyOf(points);
    }

    public static BatteryCurve of(Vehicle vehicle, List<Visit> visits) {
        var first = vehicle.electric() ? HealthTest.CAPACITY : HealthTest.CRANKING_CURRENT;
        var other = vehicle.electric() ? HealthTest.CRANKING_CURRENT : HealthTest.CAPACITY;
        var points = points(vehicle, visits, first);
        var test = points.isEmpty() ? other : first;
        points = points.isEmpty() ? points(vehicle, visits, other) : points;
        double health = points.isEmpty() ? 1 : points.getLast().share();
        var battery = vehicle.battery();
        var readings = new StandingReadings(visits.getLast());
        boolean read = OF_BATTERY.stream()
                .anyMatch(measure -> readings.ofVehicle(measure).isPresent());
        return new BatteryCurve(
                test,
                points,
                read && battery != null ? Standby.of(vehicle, battery, readings).parked(health, 1) : null);
    }

    /** Below this it is at its end. */
    public double leastShare() {
        return test.leastShare();
    }

    /** The straight line through them; empty when they are too few. */
    public Optional<HealthTrend> trend() {
        return HealthTrend.of(points, leastShare());
    }

    private static List<HealthTrend.Point> points(Vehicle vehicle, List<Visit> visits, HealthTest test) {
        var battery = vehicle.battery();
        if (battery == null) {
            return List.of();
        }
        var installed = battery.installedOn();
        return visits.stream()
                .filter(visit -> installed == null || !visit.date().isBefore(installed))
                .flatMap(visit -> TestedHealth.list(battery, new StandingReadings(visit)).stream()
                        .filter(tested -> tested.test() == test && tested.counts())
                        .map(tested -> new HealthTrend.Point(visit.date(), tested.share())))
                .toList();
    }
}
