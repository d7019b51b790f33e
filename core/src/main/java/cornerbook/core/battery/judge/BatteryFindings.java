package cornerbook.core.battery.judge;

import cornerbook.core.say.Said;

import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.HealthTrend;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.battery.RestVoltage;
import cornerbook.core.battery.StateOfCharge;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finding on the 12 V battery: charge by voltage at rest, and measured against rated cranking current. */
public final class BatteryFindings {
    /** Draw of a sleeping electric car, the middle of the 50 to 150 mA of service literature. */
    private static final double STANDBY_A = 0.1;

    private static final double LEAST_HEALTH = 0.1;

    private BatteryFindings() {}

    /**
     * The finding on the 12 V battery; empty when it was not measured.
     *
     * @param visits until the one judged, which is the last
     */
    public static Optional<Finding> of(
            Vehicle vehicle,
            List<Visit> visits,
            StandingReadings readings,
            LocalDate nextVisit,
            List<Said> notJudged) {
        var battery = vehicle.battery();
        var voltage = readings.ofVehicle(Measure.BATTERY_VOLTAGE);
        if (voltage.isEmpty()) {
            notJudged.add(Said.verbatim("12 V battery: voltage at rest not measured"));
            return Optional.empty();
        }
        if (battery.chemistry() == Chemistry.LITHIUM) {
            notJudged.add(Said.verbatim("12 V battery: lithium needs its maker's voltage table, which the book does not have"));
            return Optional.empty();
        }
        double volts = voltage.get().value();
        if (volts > StateOfCharge.HELD_UP_VOLTS) {
            notJudged.add(Said.verbatim(
                    "12 V battery: %.1f V is held up by the converter or a charger; let the car sleep and measure again"
                            .formatted(volts)));
            return Optional.empty();
        }
        var temperature = readings.ofVehicle(Measure.BATTERY_TEMPERATURE);
        double atTableV = Math.min(
                temperature
                        .map(reading -> RestVoltage.atTableTemperatureV(volts, reading.value()))
                        .orElse(volts),
                StateOfCharge.HELD_UP_VOLTS);
        double charge = RestVoltage.chargeAtTableTemperature(battery.chemistry(), atTableV);
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(
                "voltage at rest",
                "%.2f V".formatted(volts),
                "reading, written \"" + voltage.get().asWritten()
                        + "\"; taken as rested four hours and more, sooner it is a best case"));
        evidence.add(new Evidence(
                "state of charge",
                "about %.0f %%".formatted(charge * 100),
                switch (battery.chemistry()) {
                    case AGM -> "a vehicle maker's table for AGM at 27 °C, ±10 %";
                    case EFB ->
                        "BCI table for flooded lead-acid at 27 °C; EFB rests higher, so its charge is lower than this";
                    default -> "BCI table for flooded lead-acid at 27 °C, ±10 %";
                }));
        double health = 1;
        var cranking = readings.ofVehicle(Measure.BATTERY_CRANKING_CURRENT);
        var rated = battery.ratedCrankingCurrentA();
        if (cranking.isPresent() && rated != null) {
            health = cranking.get().value() / rated;
            evidence.add(
                    new Evidence(
                            "cranking current",
                            "%.0f A of %.0f A %s: %.0f %%"
                                    .formatted(cranking.get().value(), rated, battery.ratingStandard(), health * 100),
                            "tester set to that standard and told the temperature; sound at 70 % and more; watched below 80 % (common practice, no source)"));
        } else {
            notJudged.add(Said.verbatim("12 V battery: health, as no cranking current was measured against its rating"));
        }
        temperature.ifPresent(reading -> evidence.add(new Evidence(
                "temperature", "%.0f °C".formatted(reading.value()), "reading; 1.2 mV/K to the table's 27 °C")));
        var trend = BatteryCurve.of(vehicle, visits).trend();
        trend.ifPresent(line -> evidence.add(evidence(line)));
        evidence.add(parked("parked from full to half charge", parked(battery, health, 1)));
        evidence.add(parked("parked from this charge to half", parked(battery, health, charge)));
        var end = trend.map(HealthTrend::reaches).orElse(null);
        boolean ends = end != null && end.isBefore(nextVisit);
        var verdict = health < BatteryHealth.SOUND_SHARE
                ? Verdict.SPENT
                : ends || volts < RestVoltage.CHARGE_BELOW_V || health < BatteryHealth.WATCH_SHARE
                        ? Verdict.RUNS_OUT
                        : Verdict.HOLDS;
        var plain = switch (verdict) {
            case SPENT ->
                "The 12 V battery is at the end of its life. If it fails, the car cannot be started or unlocked, however full the drive battery is.";
            case RUNS_OUT ->
                ends || health < BatteryHealth.WATCH_SHARE
                        ? "The 12 V battery is getting weak; have it tested at the next visit."
                        : "The 12 V battery is low. Charge it and have it tested again.";
            default -> "The 12 V battery is in order.";
        };
        return Optional.of(new Finding(
                new Subject(Subject.Part.BATTERY, null, null, null),
                verdict,
                "12 V battery %.2f V at rest, about %.0f %% charged".formatted(volts, charge * 100),
                plain,
                verdict == Verdict.SPENT ? null : end,
                null,
                Math.clamp(Math.min(health, charge), 0, 1),
                evidence,
                "BCI open-circuit voltage table; under 12.4 V charge and test again (service literature)"));
    }

    private static Evidence evidence(HealthTrend line) {
        var end = line.reaches();
        return new Evidence(
                "trend of the health",
                "%+.0f %% a year, ±%.0f %%"
                        .formatted(line.sharePerYear() * 100, line.errorPerYear() * 100)
                        .replace('-', '−'),
                "least squares over the visits; "
                        + (end == null ? "not told apart from none, or not falling" : "70 % about " + end));
    }

    /** How long the car may stand, from a charge of 0 to 1. */
    static ParkedDays parked(TwelveVoltBattery battery, double health, double charge) {
        return ParkedDays.of(battery.ratedCapacityAh(), Math.clamp(health, LEAST_HEALTH, 1), STANDBY_A, charge);
    }

    private static Evidence parked(String what, ParkedDays parked) {
        return new Evidence(
                what,
                "%.0f days".formatted(parked.days()),
                "(charge − 0.5) × A·h × health / (24 h × 100 mA), without converter; half is kept for electronics and contactors; 50 to 150 mA is usual (service literature)");
    }
}
