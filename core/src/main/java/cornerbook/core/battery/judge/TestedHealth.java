package cornerbook.core.battery.judge;

import cornerbook.core.battery.BatterySaid;
import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.HealthTest;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.finding.Evidence;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One test of the battery's health at a visit.
 *
 * @param share measured over rated, 0 and more
 * @param counts whether the battery was charged enough for it; a battery that passes while it is low passes all the more when full
 */
record TestedHealth(HealthTest test, double share, boolean counts, Evidence evidence) {
    /** Those of a visit; the cranking current of a battery that was low and is tested again is left out. */
    static List<TestedHealth> list(TwelveVoltBattery battery, StandingReadings readings) {
        return Stream.of(capacity(battery, readings), cranking(battery, readings))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<TestedHealth> capacity(TwelveVoltBattery battery, StandingReadings readings) {
        double ratedAh = battery.ratedCapacityAh();
        return readings.ofVehicle(Measure.BATTERY_CAPACITY)
                .map(reading -> reading.value() / ratedAh)
                .map(share -> new TestedHealth(
                        HealthTest.CAPACITY,
                        share,
                        true,
                        new Evidence(
                                Label.CAPACITY,
                                new BatterySaid.Capacity(
                                        Amount.of(share * ratedAh, "A·h"),
                                        Amount.of(ratedAh, "A·h"),
                                        RestCharge.percent(share)),
                                Label.CAPACITY_SOURCE)));
    }

    private static Optional<TestedHealth> cranking(TwelveVoltBattery battery, StandingReadings readings) {
        var rated = battery.ratedCrankingCurrentA();
        if (rated == null) {
            return Optional.empty();
        }
        boolean low = RestCharge.find(battery, readings, Measure.BATTERY_VOLTAGE)
                .filter(RestCharge::low)
                .isPresent();
        return readings.ofVehicle(Measure.BATTERY_CRANKING_CURRENT_CHARGED)
                .map(reading -> cranking(battery, reading.value() / rated, rated, true, Label.CRANKING_CHARGED))
                .or(() -> readings.ofVehicle(Measure.BATTERY_CRANKING_CURRENT).map(reading -> {
                    double share = reading.value() / rated;
                    boolean counts = !low || share >= HealthTest.CRANKING_CURRENT.watchShare();
                    return cranking(
                            battery, share, rated, counts, low ? Label.CRANKING_WHILE_LOW : Label.CRANKING_SOURCE);
                }));
    }

    private static TestedHealth cranking(
            TwelveVoltBattery battery, double share, double ratedA, boolean counts, Said how) {
        return new TestedHealth(
                HealthTest.CRANKING_CURRENT,
                share,
                counts,
                new Evidence(
                        Label.CRANKING_CURRENT,
                        new BatterySaid.Cranking(
                                Amount.of(share * ratedA, "A"),
                                Amount.of(ratedA, "A"),
                                Objects.requireNonNull(battery.ratingStandard()),
                                RestCharge.percent(share)),
                        how));
    }
}
