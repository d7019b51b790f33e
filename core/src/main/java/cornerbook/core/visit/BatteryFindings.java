package cornerbook.core.visit;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.StateOfCharge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finding on the 12 V battery: charge by voltage at rest, and measured against rated cranking current. */
final class BatteryFindings {
    /** Under this voltage at rest: charge and test again. */
    private static final double CHARGE_BELOW_V = 12.4;
    /** A battery is sound at this share of its rating and more. */
    private static final double SOUND_SHARE = 0.70;
    /** Below this share it is watched. Common practice, no source. */
    private static final double WATCH_SHARE = 0.80;

    private BatteryFindings() {}

    static Optional<Finding> of(Vehicle vehicle, CurrentReadings readings, List<String> notJudged) {
        var battery = vehicle.battery();
        var voltage = readings.ofVehicle(Measure.BATTERY_VOLTAGE);
        if (voltage.isEmpty()) {
            notJudged.add("12 V battery: voltage at rest not measured");
            return Optional.empty();
        }
        if (battery.chemistry() == Chemistry.LITHIUM) {
            notJudged.add("12 V battery: lithium needs its maker's voltage table, which the book does not have");
            return Optional.empty();
        }
        double volts = voltage.get().value();
        if (volts > StateOfCharge.HELD_UP_VOLTS) {
            notJudged.add(
                    "12 V battery: %.1f V is held up by the converter or a charger; let the car sleep and measure again"
                            .formatted(volts));
            return Optional.empty();
        }
        double charge = StateOfCharge.ofFloodedLeadAcid(volts);
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(
                "voltage at rest",
                "%.2f V".formatted(volts),
                "reading, written \"" + voltage.get().asWritten() + "\""));
        evidence.add(new Evidence(
                "state of charge",
                "about %.0f %%".formatted(charge * 100),
                "BCI table for flooded lead-acid at 27 °C"
                        + (battery.chemistry() == Chemistry.FLOODED
                                ? ""
                                : "; a sealed battery rests higher, so its charge is lower than this")));
        double health = 1;
        var cranking = readings.ofVehicle(Measure.BATTERY_CRANKING_CURRENT);
        var rated = battery.ratedCrankingCurrentA();
        if (cranking.isPresent() && rated != null) {
            health = cranking.get().value() / rated;
            evidence.add(new Evidence(
                    "cranking current",
                    "%.0f A of %.0f A %s: %.0f %%"
                            .formatted(cranking.get().value(), rated, battery.ratingStandard(), health * 100),
                    "sound at 70 % and more; watched below 80 % (common practice, no source)"));
        } else {
            notJudged.add("12 V battery: health, as no cranking current was measured against its rating");
        }
        readings.ofVehicle(Measure.BATTERY_TEMPERATURE)
                .ifPresent(temperature ->
                        evidence.add(new Evidence("temperature", "%.0f °C".formatted(temperature.value()), "reading")));
        var verdict = health < SOUND_SHARE
                ? Verdict.SPENT
                : volts < CHARGE_BELOW_V || health < WATCH_SHARE ? Verdict.RUNS_OUT : Verdict.HOLDS;
        var plain = switch (verdict) {
            case SPENT ->
                "The 12 V battery is at the end of its life. If it fails, the car cannot be started or unlocked, however full the drive battery is.";
            case RUNS_OUT ->
                health < WATCH_SHARE
                        ? "The 12 V battery is getting weak; have it tested at the next visit."
                        : "The 12 V battery is low. Charge it and have it tested again.";
            default -> "The 12 V battery is in order.";
        };
        return Optional.of(new Finding(
                new Subject(Subject.Part.BATTERY, null, null, null),
                verdict,
                "12 V battery %.2f V at rest, about %.0f %% charged".formatted(volts, charge * 100),
                plain,
                null,
                null,
                Math.clamp(Math.min(health, charge), 0, 1),
                evidence,
                "BCI open-circuit voltage table; under 12.4 V charge and test again (service literature)"));
    }
}
