package cornerbook.core.battery.judge;

import cornerbook.core.battery.BatterySaid;
import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RestVoltage;
import cornerbook.core.battery.StateOfCharge;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.finding.Evidence;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a voltage at rest tells of the charge.
 *
 * @param temperatureC of the battery; null when it was not read, and the voltage counts as it stands
 * @param charge 0 to 1; null where no table stands for the cells
 * @param low whether the battery is charged before anything else is said of it
 */
record RestCharge(
        TwelveVoltBattery battery,
        Reading reading,
        @Nullable Double temperatureC,
        @Nullable Double charge,
        boolean low) {
    /** By one of the voltages of a visit; empty when it was not read, is held up, or says nothing of these cells. */
    static Optional<RestCharge> find(TwelveVoltBattery battery, StandingReadings readings, Measure measure) {
        var temperatureC = readings.ofVehicle(Measure.BATTERY_TEMPERATURE)
                .map(Reading::value)
                .orElse(null);
        return readings.ofVehicle(measure).flatMap(reading -> of(battery, reading, temperatureC));
    }

    private static Optional<RestCharge> of(TwelveVoltBattery battery, Reading reading, @Nullable Double temperatureC) {
        var makersV = battery.chargeBelowV();
        double volts = reading.value();
        if (battery.chemistry() == Chemistry.LITHIUM) {
            return Optional.ofNullable(makersV)
                    .map(limit -> new RestCharge(battery, reading, temperatureC, null, volts < limit));
        }
        if (isHeldUp(battery, reading)) {
            return Optional.empty();
        }
        double atTableV = temperatureC == null
                ? volts
                : Math.min(RestVoltage.atTableTemperatureV(volts, temperatureC), StateOfCharge.HELD_UP_VOLTS);
        double limitV = makersV == null ? RestVoltage.chargeBelowV(battery.chemistry()) : makersV;
        return Optional.of(new RestCharge(
                battery,
                reading,
                temperatureC,
                RestVoltage.chargeAtTableTemperature(battery.chemistry(), atTableV),
                atTableV < limitV));
    }

    /** Whether the converter or a charger holds up a lead-acid battery. */
    static boolean isHeldUp(TwelveVoltBattery battery, Reading voltage) {
        return battery.chemistry() != Chemistry.LITHIUM && voltage.value() > StateOfCharge.HELD_UP_VOLTS;
    }

    /** Temperature at which it freezes with the least charge that it may have; null where it has no acid. */
    @Nullable
    Double freezesAtC() {
        return charge == null ? null : (Double) RestVoltage.freezesAtC(charge);
    }

    List<Evidence> evidence() {
        var evidence = new ArrayList<Evidence>();
        boolean charged = reading.measure() == Measure.BATTERY_VOLTAGE_CHARGED;
        evidence.add(new Evidence(
                charged ? Label.VOLTAGE_CHARGED : Label.VOLTAGE_AT_REST,
                Amount.of(reading.value(), "V"),
                charged ? Label.CHARGED_SOURCE : new BatterySaid.WrittenAsRested(reading.asWritten())));
        if (charge != null) {
            evidence.add(new Evidence(Label.STATE_OF_CHARGE, new BatterySaid.About(percent(charge)), table()));
        }
        return evidence;
    }

    private Said table() {
        return switch (battery.chemistry()) {
            case AGM -> Label.AGM_TABLE_AT_27;
            case EFB -> Label.EFB_BY_FLOODED_TABLE;
            default -> Label.FLOODED_TABLE_AT_27;
        };
    }

    static Amount percent(double share) {
        return new Amount(share * 100, "%", 0);
    }
}
