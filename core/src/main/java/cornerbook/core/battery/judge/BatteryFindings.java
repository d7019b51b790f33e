package cornerbook.core.battery.judge;

import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.BatterySaid;
import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.BatterySaid.Sentence;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.HealthTrend;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.battery.RestVoltage;
import cornerbook.core.battery.StateOfCharge;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.Measure;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Finding on the 12 V battery: charge by voltage at rest, and measured against rated cranking current. */
public final class BatteryFindings {
    /** Draw of a sleeping electric car, the middle of the 50 to 150 mA of service literature. */
    private static final double STANDBY_A = 0.1;

    private static final double LEAST_HEALTH = 0.1;

    private BatteryFindings() {}

    /** The finding on the 12 V battery; none when it was not measured. */
    public static Judgement judge(Case given) {
        var readings = given.readings();
        var battery = given.vehicle().battery();
        var notJudged = new ArrayList<Said>();
        var voltage = readings.ofVehicle(Measure.BATTERY_VOLTAGE);
        if (voltage.isEmpty()) {
            return Judgement.missing(Sentence.VOLTAGE_NOT_MEASURED);
        }
        if (battery.chemistry() == Chemistry.LITHIUM) {
            return Judgement.missing(Sentence.LITHIUM_NOT_JUDGED);
        }
        double volts = voltage.get().value();
        if (volts > StateOfCharge.HELD_UP_VOLTS) {
            return Judgement.missing(new BatterySaid.HeldUpNow(new Amount(volts, "V", 1)));
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
                Label.VOLTAGE_AT_REST,
                Amount.of(volts, "V"),
                new BatterySaid.WrittenAsRested(voltage.get().asWritten())));
        evidence.add(new Evidence(
                Label.STATE_OF_CHARGE,
                new BatterySaid.About(percent(charge)),
                switch (battery.chemistry()) {
                    case AGM -> Label.AGM_TABLE_AT_27;
                    case EFB -> Label.EFB_BY_FLOODED_TABLE;
                    default -> Label.FLOODED_TABLE_AT_27;
                }));
        double health = 1;
        var cranking = readings.ofVehicle(Measure.BATTERY_CRANKING_CURRENT);
        var rated = battery.ratedCrankingCurrentA();
        if (cranking.isPresent() && rated != null) {
            health = cranking.get().value() / rated;
            evidence.add(new Evidence(
                    Label.CRANKING_CURRENT,
                    new BatterySaid.Cranking(
                            Amount.of(cranking.get().value(), "A"),
                            Amount.of(rated, "A"),
                            Objects.requireNonNull(battery.ratingStandard()),
                            percent(health)),
                    Label.CRANKING_SOURCE));
        } else {
            notJudged.add(Sentence.HEALTH_NOT_JUDGED);
        }
        temperature.ifPresent(reading -> evidence.add(
                new Evidence(Label.BATTERY_TEMPERATURE, Amount.of(reading.value(), "°C"), Label.TEMPERATURE_SOURCE)));
        var trend = BatteryCurve.of(given.vehicle(), given.visits()).trend();
        trend.ifPresent(line -> evidence.add(evidence(line)));
        evidence.add(parked(Label.PARKED_FROM_FULL, parked(battery, health, 1)));
        evidence.add(parked(Label.PARKED_FROM_THIS, parked(battery, health, charge)));
        var end = trend.map(HealthTrend::reaches).orElse(null);
        boolean ends = end != null && end.isBefore(given.nextVisit());
        var verdict = health < BatteryHealth.SOUND_SHARE
                ? Verdict.SPENT
                : ends || volts < RestVoltage.CHARGE_BELOW_V || health < BatteryHealth.WATCH_SHARE
                        ? Verdict.RUNS_OUT
                        : Verdict.HOLDS;
        Said plain = switch (verdict) {
            case SPENT -> Sentence.END_OF_LIFE;
            case RUNS_OUT -> ends || health < BatteryHealth.WATCH_SHARE ? Sentence.GETTING_WEAK : Sentence.LOW;
            default -> Sentence.IN_ORDER;
        };
        var finding = new Finding(
                new Subject(Subject.Part.BATTERY, null, null, null),
                verdict,
                new BatterySaid.AtRest(Amount.of(volts, "V"), percent(charge)),
                plain,
                verdict == Verdict.SPENT ? null : end,
                null,
                Math.clamp(Math.min(health, charge), 0, 1),
                evidence,
                Label.FINDING_SOURCE);
        return new Judgement(List.of(finding), notJudged);
    }

    private static Evidence evidence(HealthTrend line) {
        return new Evidence(
                Label.TREND,
                new BatterySaid.ChangeAYear(
                        new Margin(line.sharePerYear() * 100, "%", 0, true), percent(line.errorPerYear())),
                new BatterySaid.TrendBasis(line.reaches()));
    }

    private static Amount percent(double share) {
        return new Amount(share * 100, "%", 0);
    }

    /** How long the car may stand, from a charge of 0 to 1. */
    static ParkedDays parked(TwelveVoltBattery battery, double health, double charge) {
        return ParkedDays.of(battery.ratedCapacityAh(), Math.clamp(health, LEAST_HEALTH, 1), STANDBY_A, charge);
    }

    private static Evidence parked(Said what, ParkedDays parked) {
        return new Evidence(what, Amount.of(parked.days(), "d"), Label.PARKED_FORMULA);
    }
}
